package org.midlateral.document;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The file formats solids are written in: what each is called, and what makes its files. */
public enum SolidFormat {
  /** Binary STL, one file a part. */
  STL(Each.file("stl", StlFile::new)),
  /** STL as text, one file a part. */
  STL_ASCII(Each.file("ascii.stl", StlTextFile::new)),
  /** 3MF, one file with all parts. */
  THREE_MF(All.file("3mf", ThreeMfFile::new)),
  /** Wavefront OBJ, one file with all parts. */
  OBJ(All.file("obj", ObjFile::new)),
  /** Binary PLY, one file a part. */
  PLY(Each.file("ply", PlyFile::new)),
  /** Binary glTF 2.0, one file with all parts. */
  GLB(All.file("glb", GlbFile::new));

  /** A file to be written: its name, and what goes into it. */
  public record Named(String name, Content content) {}

  private final Maker maker;

  SolidFormat(Maker maker) {
    this.maker = maker;
  }

  /** The name a user calls it by: {@code stl}, {@code stl-ascii}, {@code 3mf}, ... */
  public String key() {
    return this == THREE_MF ? "3mf" : name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The files that hold a product in this format. */
  public List<Named> files(Solids solids) {
    return maker.files(solids);
  }

  /** The format of a name. */
  public static Optional<SolidFormat> of(String key) {
    return Stream.of(values()).filter(format -> format.key().equals(key)).findFirst();
  }

  private interface Maker {
    List<Named> files(Solids solids);
  }

  /** Makes one file for each part, named after it. */
  private record Each(String ending, Function<Part, Content> content) implements Maker {
    static Maker file(String ending, Function<Part, Content> content) {
      return new Each(ending, content);
    }

    @Override
    public List<Named> files(Solids solids) {
      return solids.parts().stream()
          .map(part -> new Named(part.name() + "." + ending, content.apply(part)))
          .toList();
    }
  }

  /** Makes one file of all parts. */
  private record All(String ending, Function<Solids, Content> content) implements Maker {
    static Maker file(String ending, Function<Solids, Content> content) {
      return new All(ending, content);
    }

    @Override
    public List<Named> files(Solids solids) {
      return List.of(new Named("orthosis." + ending, content.apply(solids)));
    }
  }
}
