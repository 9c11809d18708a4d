package org.midlateral.document;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The file formats solids are written in: what each is called, and what makes its files. */
public enum SolidFormat {
  /** Binary STL, one file a part. */
  STL,
  /** STL as text, one file a part. */
  STL_ASCII,
  /** 3MF, one file with all parts. */
  THREE_MF,
  /** Wavefront OBJ, one file with all parts. */
  OBJ,
  /** Binary PLY, one file a part. */
  PLY,
  /** Binary glTF 2.0, one file with all parts. */
  GLB;

  /** The formats that are written where none is asked for. */
  public static final List<SolidFormat> USUAL = List.of(STL, THREE_MF);

  /** A file to be written: its name, and what goes into it. */
  public record Named(String name, Content content) {}

  /** The format of a name. */
  public static Optional<SolidFormat> of(String key) {
    return Stream.of(values()).filter(format -> format.key().equals(key)).findFirst();
  }

  /** The name a user calls it by: {@code stl}, {@code stl-ascii}, {@code 3mf}, ... */
  public String key() {
    return this == THREE_MF ? "3mf" : name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The files that hold a product in this format. */
  public List<Named> files(Solids solids) {
    return switch (this) {
      case STL -> each(solids, ".stl", StlFile::new);
      case STL_ASCII -> each(solids, ".ascii.stl", StlTextFile::new);
      case THREE_MF -> List.of(new Named("orthosis.3mf", new ThreeMfFile(solids)));
      case OBJ -> List.of(new Named("orthosis.obj", new ObjFile(solids)));
      case PLY -> each(solids, ".ply", PlyFile::new);
      case GLB -> List.of(new Named("orthosis.glb", new GlbFile(solids)));
    };
  }

  /** One file for each part, named after it. */
  private static List<Named> each(Solids solids, String ending, Function<Part, Content> content) {
    return solids.parts().stream()
        .map(part -> new Named(part.name() + ending, content.apply(part)))
        .toList();
  }
}
