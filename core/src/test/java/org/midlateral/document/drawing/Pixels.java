package org.midlateral.document.drawing;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A rendered drawing, measured in mm with y upward. */
public final class Pixels {
  private static final int DPI = 300;
  private final BufferedImage image;
  private final double perMm;

  private Pixels(BufferedImage image, double perMm) {
    this.image = image;
    this.perMm = perMm;
  }

  /** A page of a PDF. */
  public static Pixels ofPdf(byte[] pdf, int page) throws IOException {
    return ofPdf(pdf, page, DPI);
  }

  /** A page of a PDF at some pixels an inch. */
  public static Pixels ofPdf(byte[] pdf, int page, int dpi) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page, dpi, ImageType.GRAY);
      return new Pixels(image, dpi / 25.4);
    }
  }

  /** An SVG, at the size that its reader takes it to have at 96 pixels an inch. */
  public static Pixels ofSvg(byte[] svg) {
    SVGDocument document =
        new SVGLoader().load(new ByteArrayInputStream(svg), null, LoaderContext.createDefault());
    double scale = DPI / 96.0;
    int width = (int) Math.ceil(document.size().width * scale);
    int height = (int) Math.ceil(document.size().height * scale);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.scale(scale, scale);
    document.render(null, graphics);
    graphics.dispose();
    return new Pixels(image, DPI / 25.4);
  }

  public double width() {
    return image.getWidth() / perMm;
  }

  public double height() {
    return image.getHeight() / perMm;
  }

  /** Middles of the dark runs on a horizontal line that are at least so thick (mm). */
  public List<Double> alongX(double y, double from, double to, double thick) {
    int row = (int) Math.round((height() - y) * perMm);
    return runs(px(from), px(to), thick, x -> dark(x, row));
  }

  /** Middles of the dark runs on a vertical line that are at least so thick, from below (mm). */
  public List<Double> alongY(double x, double from, double to, double thick) {
    int column = px(x);
    int last = image.getHeight();
    return runs(px(from), px(to), thick, up -> dark(column, last - 1 - up));
  }

  /** Whether anything is drawn outside a rectangle in the middle of the page (mm). */
  public boolean drawnOutside(double width, double height) {
    double left = (width() - width) / 2 - 1;
    double low = (height() - height) / 2 - 1;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        boolean inside =
            x > left * perMm
                && x < image.getWidth() - left * perMm
                && y > low * perMm
                && y < image.getHeight() - low * perMm;
        if (!inside && dark(x, y)) {
          return true;
        }
      }
    }
    return false;
  }

  private int px(double mm) {
    return (int) Math.round(mm * perMm);
  }

  private boolean dark(int x, int y) {
    return image.getRaster().getSample(x, y, 0) < 128;
  }

  private List<Double> runs(int from, int to, double thick, IntPredicate dark) {
    List<Double> middles = new ArrayList<>();
    int start = -1;
    for (int i = from; i <= to; i++) {
      boolean is = i < to && dark.test(i);
      if (is && start < 0) {
        start = i;
      } else if (!is && start >= 0) {
        if ((i - start) / perMm >= thick) {
          middles.add((start + i) / 2.0 / perMm);
        }
        start = -1;
      }
    }
    return middles;
  }
}
