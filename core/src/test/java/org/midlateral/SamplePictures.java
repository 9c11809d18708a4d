package org.midlateral;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import javax.imageio.ImageIO;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.midlateral.document.picture.MeshFigure;
import org.midlateral.document.picture.Picture;
import org.midlateral.document.picture.Viewpoint;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.file.Courses;
import org.midlateral.measurement.file.Orders;
import org.midlateral.mesh.TriangleMesh;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.course.FollowUp;
import org.midlateral.recipe.course.FollowUpDocument;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.solid.SkinMesh;
import org.midlateral.solid.Solid;

/**
 * Draws the pictures beside the samples, in the README and in the walk-through: each sample's
 * trough on its finger, both pieces in place and apart, pages of the bench, and the charts of each
 * course.
 */
public final class SamplePictures {
  private static final Color TROUGH = new Color(0x4F8FB8);
  private static final Color SHELL = new Color(0xE0A458);
  private static final Color SKIN = new Color(226, 184, 160, 110);
  private static final Vector3D ASIDE = Vector3D.of(0.45, -1, 0.85);

  /** How far the shell is lifted off the finger where the pieces are shown apart (mm). */
  private static final double LIFT = 16;

  private static final int DPI = 92;

  /** The part of a course's first page that is shown, as shares of its height. */
  private static final double TOP = 0.055;

  private static final double BELOW = 0.565;

  private SamplePictures() {}

  /** Takes the folder of the samples; writes into its folder of pictures. */
  public static void main(String[] arguments) throws Exception {
    Path samples = Path.of(arguments[0]);
    Path folder = Files.createDirectories(samples.resolve("pictures"));
    for (Map.Entry<String, Callable<BufferedImage>> picture : all(samples).entrySet()) {
      ImageIO.write(picture.getValue().call(), "png", folder.resolve(picture.getKey()).toFile());
    }
  }

  /** Every picture by the name of its file, drawn when it is called for. */
  static Map<String, Callable<BufferedImage>> all(Path samples) throws IOException {
    Map<String, Callable<BufferedImage>> pictures = new LinkedHashMap<>();
    files(samples.resolve("courses"))
        .forEach((name, course) -> pictures.put(name + ".png", () -> course(course)));
    files(samples)
        .forEach(
            (name, file) ->
                pictures.put(name + ".png", () -> drawn(640, 400, figures(file, false, 0))));
    Path ring = samples.resolve("bulbous-ring.yaml");
    pictures.put("in-place.png", () -> drawn(960, 560, figures(ring, true, 0)));
    pictures.put("apart.png", () -> drawn(640, 460, figures(ring, true, LIFT)));
    for (String document : List.of("bench-sheet", "pattern", "patient-page")) {
      pictures.put(document + ".png", () -> firstPage(ring, document));
    }
    return pictures;
  }

  /** The measurement files of a folder by their names. */
  private static Map<String, Path> files(Path folder) throws IOException {
    Map<String, Path> files = new TreeMap<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "*.yaml")) {
      all.forEach(file -> files.put(file.getFileName().toString().replace(".yaml", ""), file));
    }
    return files;
  }

  /** The verdict and the first two charts of a course's first page. */
  private static BufferedImage course(Path course) throws IOException {
    BufferedImage page = page(FollowUpDocument.pdf(FollowUp.of(Courses.read(course).course())), 0);
    int top = (int) (TOP * page.getHeight());
    int below = (int) (BELOW * page.getHeight());
    return page.getSubimage(0, top, page.getWidth(), below - top);
  }

  private static BufferedImage firstPage(Path sample, String document) throws IOException {
    Orders.Result read = Orders.read(sample, List.of("making=hand"));
    Product product =
        ProductRecipe.withDocuments(ProductRecipe.make(read.order(), read.cautions()));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    product.documents().orElseThrow().files().get(document + ".pdf").writeTo(bytes);
    return page(bytes.toByteArray(), 0);
  }

  private static BufferedImage page(byte[] pdf, int number) throws IOException {
    try (PDDocument pages = Loader.loadPDF(pdf)) {
      return new PDFRenderer(pages).renderImageWithDPI(number, DPI, ImageType.GRAY);
    }
  }

  private static List<MeshFigure> figures(Path sample, boolean both, double lift)
      throws DesignRefused {
    Orthosis made = Orthosis.make(Orders.read(sample, List.of()).order());
    Measurements measured = made.order().measurements();
    SkinMesh skin =
        SkinMesh.of(made.digit(), -measured.palmarCreaseToWeb(), List.of(), SkinMesh.AROUND, 0.8);
    MeshFigure trough = new MeshFigure(made.trough().mesh(), TROUGH);
    MeshFigure finger = new MeshFigure(skin.mesh(), SKIN);
    if (!both) {
      return List.of(trough, finger);
    }
    Solid shell = made.dorsalShell().orElseThrow();
    return List.of(trough, new MeshFigure(lifted(shell.mesh(), lift), SHELL), finger);
  }

  private static TriangleMesh lifted(TriangleMesh mesh, double lift) {
    double[] xyz = mesh.coordinates();
    for (int i = 2; i < xyz.length; i += 3) {
      xyz[i] += lift;
    }
    return new TriangleMesh(xyz, mesh.triangles());
  }

  private static BufferedImage drawn(int width, int height, List<MeshFigure> figures) {
    Viewpoint view = Viewpoint.from(ASIDE, Vector3D.Unit.PLUS_Z);
    return new Picture(figures, view, width, height).image();
  }
}
