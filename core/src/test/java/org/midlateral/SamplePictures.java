package org.midlateral;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Courses;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Orthosis;
import org.midlateral.recipe.course.FollowUp;
import org.midlateral.recipe.course.FollowUpDocument;
import org.midlateral.solid.SkinMesh;

/**
 * Draws each sample's trough on its finger, and the charts of each course: the pictures beside the
 * samples and in the README.
 */
public final class SamplePictures {
  private static final Color PIECE = new Color(0x4F8FB8);
  private static final Color SKIN = new Color(226, 184, 160, 110);
  private static final int DPI = 92;

  /** The part of a course's first page that is shown, as shares of its height. */
  private static final double TOP = 0.055;

  private static final double BELOW = 0.565;

  private SamplePictures() {}

  /** Takes the folder of the samples; writes into its folder of pictures. */
  public static void main(String[] arguments) throws Exception {
    Path samples = Path.of(arguments[0]);
    List<Path> files = new ArrayList<>();
    try (var all = Files.newDirectoryStream(samples, "*.yaml")) {
      all.forEach(files::add);
    }
    Path pictures = Files.createDirectories(samples.resolve("pictures"));
    try (var courses = Files.newDirectoryStream(samples.resolve("courses"), "*.yaml")) {
      for (Path course : courses) {
        String name = course.getFileName().toString().replace(".yaml", ".png");
        follow(course, pictures.resolve(name));
      }
    }
    for (Path file : files) {
      String name = file.getFileName().toString().replace(".yaml", ".png");
      draw(Orders.read(file, List.of()).order(), pictures.resolve(name));
    }
  }

  /** The verdict and the first two charts of a course's first page. */
  private static void follow(Path course, Path picture) throws IOException {
    byte[] pdf = FollowUpDocument.pdf(FollowUp.of(Courses.read(course).course()));
    try (PDDocument pages = Loader.loadPDF(pdf);
        OutputStream out = Files.newOutputStream(picture)) {
      BufferedImage page = new PDFRenderer(pages).renderImageWithDPI(0, DPI, ImageType.GRAY);
      int width = page.getWidth();
      int height = page.getHeight();
      int top = (int) (TOP * height);
      BufferedImage part = page.getSubimage(0, top, width, (int) (BELOW * height) - top);
      ImageIO.write(part, "png", out);
    }
  }

  private static void draw(Order order, Path picture) throws IOException, DesignRefused {
    Orthosis made = Orthosis.make(order);
    Measurements measured = order.measurements();
    SkinMesh skin =
        SkinMesh.of(made.digit(), -measured.palmarCreaseToWeb(), List.of(), SkinMesh.AROUND, 0.8);
    Viewpoint view = Viewpoint.from(Vector3D.of(0.45, -1, 0.85), Vector3D.Unit.PLUS_Z);
    List<MeshFigure> figures =
        List.of(new MeshFigure(made.trough().mesh(), PIECE), new MeshFigure(skin.mesh(), SKIN));
    try (OutputStream out = Files.newOutputStream(picture)) {
      new Picture(figures, view, 640, 400).writeTo(out);
    }
  }
}
