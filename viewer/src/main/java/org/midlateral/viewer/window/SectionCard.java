package org.midlateral.viewer.window;

import java.awt.BorderLayout;
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
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.SwingConstants;
import org.midlateral.viewer.colour.Scale;
import org.midlateral.viewer.scene.Made;
import org.midlateral.viewer.section.Section;
import org.midlateral.viewer.section.Stations;
import org.midlateral.viewer.view.Palette;
import org.midlateral.viewer.view.SectionDrawing;
import org.midlateral.viewer.view.SkinTone;

/** The section: a slider along the finger, the drawing, and its figures. */
final class SectionCard extends JPanel {
  private static final long serialVersionUID = 1;
  private static final double STEPS_PER_MM = 2;

  private final JSlider slider = new JSlider();
  private final JLabel place = new JLabel();
  private final SectionDrawing drawing = new SectionDrawing();
  private final Map<String, JLabel> figures = new LinkedHashMap<>();
  private final transient DoubleConsumer onStation;
  private transient Made.View view;
  private double station = Double.NaN;
  private boolean setting;

  SectionCard(DoubleConsumer onStation) {
    super(new BorderLayout(0, 4));
    this.onStation = onStation;
    setBorder(BorderFactory.createEmptyBorder(6, 10, 6, 10));
    JPanel head = new JPanel(new BorderLayout());
    JLabel title = new JLabel("Section");
    title.setFont(title.getFont().deriveFont(Font.BOLD));
    title.setLabelFor(slider);
    place.setName("section.station");
    head.add(title, BorderLayout.WEST);
    head.add(place, BorderLayout.EAST);
    slider.setName("station");
    slider.getAccessibleContext().setAccessibleName("Station of the section");
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
    String[] rows = {"area", "inertia", "rigidity", "gap"};
    String[] names = {"Area, mm²", "I, mm⁴", "EI, N·mm²", "Least gap to skin, mm"};
    GridBagConstraints at = new GridBagConstraints();
    at.insets = new Insets(1, 0, 1, 4);
    at.fill = GridBagConstraints.HORIZONTAL;
    at.gridy = 0;
    head(table, at, 1, "Trough");
    head(table, at, 2, "Dorsal shell");
    for (int r = 0; r < rows.length; r++) {
      at.gridy = r + 1;
      at.gridx = 0;
      at.weightx = 0;
      table.add(new JLabel(names[r]), at);
      figure(table, at, 1, "trough." + rows[r]);
      figure(table, at, 2, "shell." + rows[r]);
    }
    at.gridy++;
    at.gridx = 0;
    at.weightx = 0;
    table.add(new JLabel("Round the skin, mm"), at);
    figure(table, at, 1, "skin.girth");
    at.gridy++;
    at.gridx = 0;
    at.weightx = 0;
    table.add(new JLabel("Midline to mid-lateral"), at);
    figure(table, at, 1, "skin.quarter");
    return table;
  }

  private static void head(JPanel table, GridBagConstraints at, int column, String text) {
    at.gridx = column;
    at.weightx = 1;
    JLabel label = new JLabel(text, SwingConstants.TRAILING);
    label.setFont(label.getFont().deriveFont(Font.BOLD));
    table.add(label, at);
  }

  private void figure(JPanel table, GridBagConstraints at, int column, String name) {
    at.gridx = column;
    at.weightx = 1;
    JLabel label = new JLabel("–", SwingConstants.TRAILING);
    label.setName("section." + name);
    figures.put(name, label);
    table.add(label, at);
  }

  /** The next design is shown at its PIP axis. */
  void forget() {
    station = Double.NaN;
  }

  /** Shows the section of a design at the same station as before, or at the PIP axis at first. */
  void show(Made.View design) {
    view = design;
    setting = true;
    int first = (int) Math.ceil(Stations.first(view) * STEPS_PER_MM);
    int last = (int) Math.floor(Stations.last(view) * STEPS_PER_MM);
    slider.setMinimum(first);
    slider.setMaximum(last);
    marks();
    setting = false;
    double at = Double.isNaN(station) ? view.orthosis().digit().pipAxis() : station;
    moveTo(Math.max(Stations.first(view), Math.min(Stations.last(view), at)));
  }

  /** Short marks under the slider at the web, the PIP axis and the end. */
  private void marks() {
    Hashtable<Integer, JComponent> labels = new Hashtable<>();
    labels.put(0, new JLabel("web"));
    int pip = (int) Math.round(view.orthosis().digit().pipAxis() * STEPS_PER_MM);
    labels.put(pip, new JLabel("PIP"));
    int tip = (int) Math.round(view.orthosis().digit().tip() * STEPS_PER_MM);
    labels.put(tip, new JLabel("pulp"));
    slider.setLabelTable(labels);
    slider.setPaintLabels(true);
    slider.revalidate();
  }

  /** Goes to a station (mm). */
  void moveTo(double millimetres) {
    station = millimetres;
    if (view == null) {
      return;
    }
    setting = true;
    slider.setValue((int) Math.round(station * STEPS_PER_MM));
    setting = false;
    Section section = Section.of(view, station);
    drawing.show(view, section);
    place.setText(where(station));
    fill("trough", section.cut(false));
    fill("shell", section.cut(true));
    figures.get("skin.girth").setText(decimals(section.circumference(), 1));
    figures.get("skin.quarter").setText(decimals(section.circumference() / 4, 1));
    onStation.accept(station);
  }

  private static String where(double station) {
    String side = station < 0 ? "proximal" : "distal";
    return String.format(Locale.ROOT, "%.1f mm %s of the web", Math.abs(station), side);
  }

  private void fill(String piece, Optional<Section.Cut> cut) {
    put(piece + ".area", cut, c -> decimals(c.moments().area(), 1));
    put(piece + ".inertia", cut, c -> Scale.text(c.moments().inertia()));
    put(piece + ".rigidity", cut, c -> Scale.text(c.rigidity()));
    put(piece + ".gap", cut, c -> decimals(c.leastGap(), 2));
  }

  private void put(String name, Optional<Section.Cut> cut, Function<Section.Cut, String> text) {
    figures.get(name).setText(cut.map(text).orElse("–"));
  }

  private static String decimals(double value, int places) {
    return String.format(Locale.ROOT, "%." + places + "f", value);
  }

  double station() {
    return station;
  }

  void setPalette(Palette palette) {
    drawing.setPalette(palette);
  }

  void setTone(SkinTone tone) {
    drawing.setTone(tone);
  }
}
