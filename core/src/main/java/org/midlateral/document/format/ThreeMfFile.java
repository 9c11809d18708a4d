package org.midlateral.document.format;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.midlateral.document.Content;

/**
 * Solids as a 3MF package (3MF Core Specification 1.4, 3MF Consortium): a zip of three parts, the
 * content types, the one relationship that names the model, and the model itself. Every solid is a
 * named object in mm with the same 32-bit coordinates as in its STL file; the build turns each into
 * its pose and lays them side by side on the bed, within the positive octant.
 *
 * <p>Same input, same bytes: entries carry one fixed time.
 *
 * @param solids what is written
 */
public record ThreeMfFile(SolidSet solids) implements Content {
  /** Where a reader finds the model in the package. */
  static final String MODEL = "3D/3dmodel.model";

  private static final LocalDateTime TIME = LocalDateTime.of(2026, 1, 1, 0, 0);
  private static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
  private static final String TYPES =
      XML
          + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">\n"
          + " <Default Extension=\"rels\""
          + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>\n"
          + " <Default Extension=\"model\""
          + " ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/>\n"
          + "</Types>\n";
  private static final String RELATIONSHIPS =
      XML
          + "<Relationships"
          + " xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">\n"
          + " <Relationship Id=\"model\" Target=\"/"
          + MODEL
          + "\" Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/>\n"
          + "</Relationships>\n";

  @Override
  public void writeTo(OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out);
    zip.setLevel(Deflater.BEST_SPEED);
    put(zip, "[Content_Types].xml", TYPES);
    put(zip, "_rels/.rels", RELATIONSHIPS);
    put(zip, MODEL, ThreeMfModel.of(solids));
    zip.finish();
  }

  private static void put(ZipOutputStream zip, String name, String text) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(TIME);
    zip.putNextEntry(entry);
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }
}
