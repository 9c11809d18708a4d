package org.midlateral;

import java.awt.Color;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.midlateral.document.picture.MeshFigure;
import org.midlateral.document.picture.Picture;
import org.midlateral.document.picture.Viewpoint;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Measurements;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.Orthosis;
import org.midlateral.solid.SkinMesh;

/** Draws each sample's trough on its finger: the pictures beside the samples and in the README. */
public final class SamplePictures {
  private static final Color PIECE = new Color(0x4F8FB8);
  private static final Color SKIN = new Color(226, 184, 160, 110);

  private SamplePictures() {}

  /** Takes the folder of the samples; writes into its folder of pictures. */
  public static void main(String[] arguments) throws Exception {
    Path samples = Path.of(arguments[0]);
    List<Path> files = new ArrayList<>();
    try (var all = Files.newDirectoryStream(samples, "*.yaml")) {
      all.forEach(files::add);
    }
    Path pictures = Files.createDirectories(samples.resolve("pictures"));
    for (Path file : files) {
      String name = file.getFileName().toString().replace(".yaml", ".png");
      draw(Orders.read(file, List.of()).order(), pictures.resolve(name));
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
