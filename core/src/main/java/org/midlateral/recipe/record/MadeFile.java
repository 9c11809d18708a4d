package org.midlateral.recipe.record;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.midlateral.document.Content;
import org.midlateral.document.Digest;

/**
 * A file as it was written.
 *
 * @param sha256 of its bytes, in small hexadecimal figures
 * @param bytes how many
 */
public record MadeFile(String sha256, long bytes) {
  /** Writes a content and tells what was written. */
  public static MadeFile written(Content content, OutputStream out) throws IOException {
    MessageDigest digest = Digest.sha256();
    long[] count = new long[1];
    content.writeTo(
        new FilterOutputStream(out) {
          @Override
          public void write(int b) throws IOException {
            out.write(b);
            digest.update((byte) b);
            count[0]++;
          }

          @Override
          public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
            digest.update(bytes, from, length);
            count[0] += length;
          }
        });
    return new MadeFile(HexFormat.of().formatHex(digest.digest()), count[0]);
  }

  /** Of a file's content. */
  public static MadeFile of(byte[] content) {
    return new MadeFile(Digest.of(content), content.length);
  }
}
