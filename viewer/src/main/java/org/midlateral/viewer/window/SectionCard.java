package org.midlateral.viewer.window;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.util.Hashtable;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.SwingConstants;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.drawing.SectionDrawing;
import org.midlateral.viewer.drawing.SkinTone;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.Landmark;
import org.midlateral.viewer.section.CrossSection;
import org.midlateral.viewer.section.SkinPressure;
import org.midlateral.viewer.section.Stations;

/** The section: a slider along the finger, the drawing, and its figures. */
final class SectionCard extends JPanel {
  private static final long serialVersionUID = 1;
  private static final double STEPS_PER_MM = 2;
  private static final int JUMP_WIDTH = 112;
  private static final String TITLE = "Section";
  private static final String NOT_MADE = "not made yet";
  private static final String NONE = "–";

  /** From a column of figures to the next, at least (px). */
  private static final int BETWEEN = 5;

  private static final String INERTIA = "Second moment of area about the medio-lateral axis of ";
  private static final String RIGIDITY =
      "Elastic modulus times second moment of area, against bending in flexion, of ";

  private final JSlider slider = new JSlider();
  private final JLabel title = new JLabel(TITLE);
  private final JLabel place = new JLabel();
  private final SectionDrawing drawing = new SectionDrawing();
  private final Map<String, JLabel> figures = new LinkedHashMap<>();
  private final JComboBox<Mark> jump = new JComboBox<>();
  private final transient DoubleConsumer onStation;

  /** A landmark with its station (mm). */
  private record Mark(String name, double station) {
    @Override
    public String toString() {
      return name;
    }
  }

  private transient DesignShapes design;
  private double station = Double.NaN;
  private boolean setting;

  SectionCard(DoubleConsumer onStation) {
    super(new BorderLayout(0, 4));
    this.onStation = onStation;
    setBorder(BorderFactory.createEmptyBorder(6, 10, 6, 10));
    JPanel head = new JPanel(new BorderLayout());
    title.setFont(title.getFont().deriveFont(Font.BOLD));
    title.setLabelFor(slider);
    title.setName("section.title");
    title.setToolTipText("Finger and pieces, cut square to the finger's middle line");
    place.setName("section.station");
    place.setToolTipText("Where the section is cut, along the finger's middle line");
    drawing.setToolTipText("Gaps from the skin to the pieces in mm, or what presses on it");
    head.add(title, BorderLayout.NORTH);
    JPanel where = new JPanel(new BorderLayout());
    where.add(place, BorderLayout.CENTER);
    where.add(jump, BorderLayout.EAST);
    head.add(where, BorderLayout.CENTER);
    jump.setName("section.jump");
    jump.getAccessibleContext().setAccessibleName("Go to a landmark");
    jump.setPreferredSize(new Dimension(JUMP_WIDTH, jump.getPreferredSize().height));
    jump.setRenderer(
        new DefaultListCellRenderer() {
          private static final long serialVersionUID = 1;

          @Override
          public Component getListCellRendererComponent(
              JList<?> list, Object value, int index, boolean selected, boolean focused) {
            Object shown = value == null ? "Go to" : value;
            return super.getListCellRendererComponent(list, shown, index, selected, focused);
          }
        });
    jump.setToolTipText("Go to a landmark, just where it lies");
    jump.addActionListener(
        e -> {
          if (!setting && jump.getSelectedItem() instanceof Mark mark) {
            moveTo(mark.station());
          }
        });
    slider.setName("station");
    slider.setToolTipText("Move the section along the finger");
    slider.getAccessibleContext().setAccessibleName("Distance of the section from the web");
    slider.addChangeListener(
        e -> {
          if (!setting) {
            moveTo(slider.getValue() / STEPS_PER_MM);
          }
        });
    head.add(slider, BorderLayout.SOUTH);
    add(head, BorderLayout.NORTH);
    add(drawing, BorderLayout.CENTER);
    add(table(), BorderLayout.SOUTH);
  }

  private JComponent table() {
    JPanel table = new JPanel(new GridBagLayout());
    GridBagConstraints at = new GridBagConstraints();
    at.insets = new Insets(1, 0, 1, 3);
    at.fill = GridBagConstraints.HORIZONTAL;
    at.gridy = 0;
    cell(table, at, 1, head("Area, mm²"));
    cell(table, at, 2, head("I, mm⁴"));
    cell(table, at, 3, head("EI, N·mm²"));
    String[] rows = {"trough", "shell", "slipping", "bonded"};
    String[] names = {"Trough", "Dorsal shell", "Both, slipping", "Both, bonded"};
    String[] whose = {
      "the trough alone",
      "the dorsal shell alone",
      "both pieces, each bending for itself",
      "both pieces bonded along their edges"
    };
    for (int r = 0; r < rows.length; r++) {
      at.gridy++;
      cell(table, at, 0, new JLabel(names[r]));
      cell(table, at, 1, figure(rows[r] + ".area", "Area of this section of " + whose[r]));
      cell(table, at, 2, figure(rows[r] + ".inertia", INERTIA + whose[r]));
      cell(table, at, 3, figure(rows[r] + ".rigidity", RIGIDITY + whose[r]));
    }
    at.insets = new Insets(6, 0, 1, 2);
    wide(
        table,
        at,
        "Least gap to trough, shell; mm",
        figure("gap", "Least distance in this section from the skin to the trough, to the shell"));
    at.insets = new Insets(1, 0, 1, 2);
    wide(
        table,
        at,
        "Clearance over the liner, mm",
        figure("liner", "Least distance from the skin to the trough less the liner's thickness"));
    wide(
        table,
        at,
        "Overlap, gap of the pieces; mm",
        figure("overlap", "How far the shell reaches past the trough's rims; least gap between"));
    wide(
        table,
        at,
        "Bridge of trough, shell; mm",
        figure("bridge", "How much further a piece stands off a waist than its clearance asks"));
    wide(
        table,
        at,
        "Round the skin, mm",
        figure("skin.girth", "Girth of the finger in this section, as a tape would read it"));
    wide(
        table,
        at,
        "Midline to mid-lateral, mm",
        figure("skin.quarter", "Along the skin, a quarter of the girth: where a half trough ends"));
    return table;
  }

  private static void cell(JPanel table, GridBagConstraints at, int column, JLabel label) {
    at.gridx = column;
    at.gridwidth = 1;
    at.weightx = column == 0 ? 0 : 1;
    at.insets.left = column > 1 ? BETWEEN : 0;
    table.add(label, at);
    at.insets.left = 0;
  }

  private static void wide(JPanel table, GridBagConstraints at, String name, JLabel figure) {
    at.gridy++;
    at.gridx = 0;
    at.gridwidth = 3;
    at.weightx = 0;
    JLabel label = new JLabel(name);
    label.setToolTipText(figure.getToolTipText());
    table.add(label, at);
    at.gridx = 3;
    at.gridwidth = 1;
    table.add(figure, at);
  }

  private static JLabel head(String text) {
    JLabel label = new JLabel(text, SwingConstants.TRAILING);
    label.setFont(label.getFont().deriveFont(Font.BOLD));
    return label;
  }

  private JLabel figure(String name, String meaning) {
    JLabel label = new JLabel(NONE, SwingConstants.TRAILING);
    label.setToolTipText(meaning);
    label.setName("section." + name);
    figures.put(name, label);
    return label;
  }

  /** Shows the next design at its PIP axis. */
  void resetStation() {
    station = Double.NaN;
  }

  /** Shows nothing, in figures and drawing. */
  void clear() {
    design = null;
    drawing.clear();
    title.setText(TITLE);
    place.setText(NOT_MADE);
    slider.setEnabled(false);
    jump.removeAllItems();
    figures.values().forEach(figure -> figure.setText(NONE));
  }

  /** Shows the section of a design at the same station as before, or at the PIP axis at first. */
  void show(DesignShapes next) {
    design = next;
    title.setText(TITLE + " of " + design.orthosis().order().measurements().reference());
    slider.setEnabled(true);
    setting = true;
    int first = (int) Math.ceil(Stations.first(design) * STEPS_PER_MM);
    int last = (int) Math.floor(Stations.last(design) * STEPS_PER_MM);
    slider.setMinimum(first);
    slider.setMaximum(last);
    marks();
    jump.removeAllItems();
    for (Landmark mark : design.landmarks()) {
      if (!mark.name().isEmpty()
          && !Double.isNaN(mark.station())
          && mark.station() >= Stations.first(design)) {
        jump.addItem(new Mark(mark.name(), Math.min(mark.station(), Stations.last(design))));
      }
    }
    jump.setSelectedItem(null);
    setting = false;
    double at = Double.isNaN(station) ? design.orthosis().digit().pipAxis() : station;
    moveTo(Math.max(Stations.first(design), Math.min(Stations.last(design), at)));
  }

  /** Short marks under the slider at the web, the PIP axis and the end. */
  @SuppressWarnings("JdkObsolete") // the slider takes no other table
  private void marks() {
    Hashtable<Integer, JComponent> labels = new Hashtable<>();
    labels.put(0, new JLabel("web"));
    int pip = (int) Math.round(design.orthosis().digit().pipAxis() * STEPS_PER_MM);
    labels.put(pip, new JLabel("PIP"));
    int tip = (int) Math.round(design.orthosis().digit().tip() * STEPS_PER_MM);
    labels.put(tip, new JLabel("pulp"));
    slider.setLabelTable(labels);
    slider.setPaintLabels(true);
    slider.revalidate();
  }

  /** Goes to a station (mm). */
  void moveTo(double millimetres) {
    station = millimetres;
    if (design == null) {
      return;
    }
    setting = true;
    slider.setValue((int) Math.round(station * STEPS_PER_MM));
    setting = false;
    CrossSection section = CrossSection.of(design, station);
    drawing.show(design, section);
    place.setText(where(station));
    fill("trough", section.cut(false).map(CrossSection.Cut::figures));
    fill("shell", section.cut(true).map(CrossSection.Cut::figures));
    fill("slipping", section.slipping());
    fill("bonded", section.bonded());
    figures.get("gap").setText(gap(section.cut(false)) + ", " + gap(section.cut(true)));
    double liner = design.orthosis().order().design().trough().liner();
    figures
        .get("liner")
        .setText(section.cut(false).map(c -> decimals(c.leastGap() - liner, 2)).orElse(NONE));
    figures
        .get("overlap")
        .setText(
            section.overlap().map(o -> decimals(o, 1)).orElse(NONE)
                + ", "
                + section.between().map(b -> decimals(b, 2)).orElse(NONE));
    figures.get("bridge").setText(bridge(section.cut(false)) + ", " + bridge(section.cut(true)));
    figures.get("skin.girth").setText(decimals(section.circumference(), 1));
    figures.get("skin.quarter").setText(decimals(section.circumference() / 4, 1));
    onStation.accept(station);
  }

  private static String where(double station) {
    String side = station < 0 ? "proximal" : "distal";
    return String.format(Locale.ROOT, "%.1f mm %s of the web", Math.abs(station), side);
  }

  private static String gap(Optional<CrossSection.Cut> cut) {
    return cut.map(c -> decimals(c.leastGap(), 2)).orElse(NONE);
  }

  private static String bridge(Optional<CrossSection.Cut> cut) {
    return cut.map(c -> decimals(c.bridge().rise(), 2)).orElse(NONE);
  }

  private void fill(String row, Optional<CrossSection.SectionFigures> worth) {
    put(row + ".area", worth, f -> decimals(f.area(), 1));
    put(row + ".inertia", worth, f -> Scale.text(f.inertia()));
    put(row + ".rigidity", worth, f -> Scale.text(f.rigidity()));
  }

  private void put(
      String name,
      Optional<CrossSection.SectionFigures> worth,
      Function<CrossSection.SectionFigures, String> text) {
    figures.get(name).setText(worth.map(text).orElse(NONE));
  }

  private static String decimals(double value, int places) {
    return String.format(Locale.ROOT, "%." + places + "f", value);
  }

  double station() {
    return station;
  }

  /** Shows what presses on the skin, or nothing. */
  void setPressure(Optional<SkinPressure> pressure) {
    drawing.setPressure(pressure);
  }

  void setPalette(Palette palette) {
    drawing.setPalette(palette);
  }

  void setTone(SkinTone tone) {
    drawing.setTone(tone);
  }
}
