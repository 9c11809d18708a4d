package org.midlateral.document.format;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.midlateral.document.Content;

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

  /** Name of the file that holds a part in this format. */
  public String fileOf(String part) {
    return switch (this) {
      case STL -> part + ".stl";
      case STL_ASCII -> part + ".ascii.stl";
      case PLY -> part + ".ply";
      case THREE_MF, OBJ, GLB -> "orthosis." + key();
    };
  }

  /** The files that hold a product in this format. */
  public List<Named> files(SolidSet solids) {
    return switch (this) {
      case STL -> each(solids, StlFile::new);
      case STL_ASCII -> each(solids, StlTextFile::new);
      case THREE_MF -> all(new ThreeMfFile(solids));
      case OBJ -> all(new ObjFile(solids));
      case PLY -> each(solids, PlyFile::new);
      case GLB -> all(new GlbFile(solids));
    };
  }

  private List<Named> all(Content content) {
    return List.of(new Named(fileOf(""), content));
  }

  /** One file for each part, named after it. */
  private List<Named> each(SolidSet solids, Function<NamedSolid, Content> content) {
    return solids.parts().stream()
        .map(part -> new Named(fileOf(part.name()), content.apply(part)))
        .toList();
  }
}
