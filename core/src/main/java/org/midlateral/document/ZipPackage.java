package org.midlateral.document;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;

/**
 * A zip file of a few entries (PKWARE, .ZIP File Format Specification): each deflated where that
 * makes it shorter, all with one fixed time. Entries must stay under 2 GB.
 */
final class ZipPackage {
  private static final int LOCAL = 0x04034b50;
  private static final int CENTRAL = 0x02014b50;
  private static final int END = 0x06054b50;
  private static final short VERSION = 20;
  private static final short DEFLATED = 8;

  /** 2026-01-01, 00:00, as MS-DOS had it. */
  private static final int TIME = (2026 - 1980 << 9 | 1 << 5 | 1) << 16;

  private final Map<String, byte[]> entries = new LinkedHashMap<>();

  ZipPackage add(String name, byte[] content) {
    entries.put(name, content);
    return this;
  }

  void writeTo(OutputStream out) throws IOException {
    ByteBuffer directory = buffer(100 * entries.size() + 4096);
    int at = 0;
    for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
      byte[] name = entry.getKey().getBytes(StandardCharsets.US_ASCII);
      byte[] content = entry.getValue();
      byte[] packed = RowDeflate.of(content);
      boolean deflated = packed.length < content.length;
      byte[] data = deflated ? packed : content;
      ByteBuffer facts = facts(deflated, content, data.length, name.length);
      ByteBuffer local = buffer(30 + name.length).putInt(LOCAL).put(facts.array()).put(name);
      out.write(local.array());
      out.write(data);
      directory.putInt(CENTRAL).putShort(VERSION).put(facts.array());
      // No comment, first disk, no attributes.
      directory.putShort((short) 0).putShort((short) 0).putShort((short) 0).putInt(0);
      directory.putInt(at).put(name);
      at += local.capacity() + data.length;
    }
    short count = (short) entries.size();
    int size = directory.position();
    directory.putInt(END).putInt(0).putShort(count).putShort(count);
    directory.putInt(size).putInt(at).putShort((short) 0);
    out.write(directory.array(), 0, directory.position());
  }

  /** What both headers of an entry say of it. */
  private static ByteBuffer facts(boolean deflated, byte[] content, int packed, int name) {
    CRC32 sum = new CRC32();
    sum.update(content);
    ByteBuffer facts = buffer(26).putShort(VERSION).putShort((short) 0);
    facts.putShort(deflated ? DEFLATED : 0).putInt(TIME).putInt((int) sum.getValue());
    return facts.putInt(packed).putInt(content.length).putShort((short) name).putShort((short) 0);
  }

  private static ByteBuffer buffer(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }
}
