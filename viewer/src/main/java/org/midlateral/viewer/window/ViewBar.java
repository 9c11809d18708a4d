package org.midlateral.viewer.window;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JToggleButton;
import org.midlateral.viewer.drawing.SkinTone;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.view.FingerView;
import org.midlateral.viewer.view.PartVisibility;
import org.midlateral.viewer.view.ViewPart;
import org.midlateral.viewer.view.ViewSide;

/** What is shown, how it is coloured, and from where it is seen. */
final class ViewBar {
  private static final int MOST_PULL = 30;
  private static final int GAP = 6;

  private final FingerView view;
  private final JPanel above = new JPanel();
  private final JPanel below = row();

  ViewBar(FingerView view, Consumer<Quantity> onQuantity, Consumer<SkinTone> onTone) {
    this.view = view;
    above.setLayout(new BoxLayout(above, BoxLayout.Y_AXIS));
    JPanel parts = row();
    for (ViewPart part : new ViewPart[] {ViewPart.FINGER, ViewPart.TROUGH, ViewPart.SHELL}) {
      add(parts, visibility(part));
    }
    add(parts, marks());
    JPanel colours = row();
    JComboBox<Quantity> quantity = box(Quantity.values(), Quantity::title);
    quantity.setName("quantity");
    quantity.setToolTipText("What the colours of the pieces tell");
    quantity.addActionListener(e -> onQuantity.accept((Quantity) quantity.getSelectedItem()));
    labelled(colours, "Colour by", quantity);
    labelled(colours, "Skin", tones(onTone));
    labelled(colours, "Pull apart", pull());
    above.add(parts);
    above.add(colours);
    sides();
  }

  private static JPanel row() {
    JPanel row = new WrappingRow();
    row.setBorder(BorderFactory.createEmptyBorder(0, 2, 0, 2));
    return row;
  }

  private static void add(JPanel row, JComponent control) {
    row.add(control);
  }

  /** A control with its name before it, which stay together. */
  private static void labelled(JPanel row, String text, JComponent control) {
    JLabel label = new JLabel(text);
    label.setLabelFor(control);
    JPanel both = new JPanel(new BorderLayout(GAP, 0));
    both.setOpaque(false);
    both.add(label, BorderLayout.WEST);
    both.add(control, BorderLayout.CENTER);
    add(row, both);
  }

  /** A box that shows its items by words of theirs. */
  private static <T> JComboBox<T> box(T[] items, Function<T, String> words) {
    JComboBox<T> box = new JComboBox<>(items);
    box.setRenderer(
        new DefaultListCellRenderer() {
          private static final long serialVersionUID = 1;

          @Override
          public Component getListCellRendererComponent(
              JList<?> list, Object value, int index, boolean selected, boolean focused) {
            @SuppressWarnings("unchecked")
            String text = words.apply((T) value);
            return super.getListCellRendererComponent(list, text, index, selected, focused);
          }
        });
    return box;
  }

  private JComboBox<PartVisibility> visibility(ViewPart part) {
    JComboBox<PartVisibility> box = box(PartVisibility.values(), way -> part + " " + way);
    box.setName("show." + part.name().toLowerCase(Locale.ROOT));
    box.getAccessibleContext().setAccessibleName("How to show: " + part);
    box.setToolTipText("Show, hide or look through: " + part.toString().toLowerCase(Locale.ROOT));
    box.addActionListener(
        e -> view.choose(view.choice().with(part, (PartVisibility) box.getSelectedItem())));
    return box;
  }

  private JCheckBox marks() {
    JCheckBox marks = new JCheckBox(ViewPart.MARKS.toString(), true);
    marks.setName("show.marks");
    marks.setToolTipText("Levels, creases, axis and the section's hoop");
    marks.addActionListener(
        e ->
            view.choose(
                view.choice()
                    .with(
                        ViewPart.MARKS,
                        marks.isSelected() ? PartVisibility.SHOWN : PartVisibility.HIDDEN)));
    return marks;
  }

  private JComboBox<SkinTone> tones(Consumer<SkinTone> onTone) {
    JComboBox<SkinTone> box = box(SkinTone.values(), SkinTone::toString);
    box.setName("tone");
    box.setToolTipText("The colour that the finger is drawn in");
    box.addActionListener(
        e -> {
          SkinTone tone = (SkinTone) box.getSelectedItem();
          view.choose(view.choice().withTone(tone));
          onTone.accept(tone);
        });
    return box;
  }

  private JSlider pull() {
    JSlider pull = new JSlider(0, MOST_PULL, 0);
    pull.setName("pull");
    pull.setToolTipText("Draw the pieces off the finger, the way they were put on");
    int height = pull.getPreferredSize().height;
    pull.setMinimumSize(new Dimension(58, height));
    pull.setPreferredSize(new Dimension(62, height));
    pull.addChangeListener(e -> view.choose(view.choice().withPull(pull.getValue())));
    return pull;
  }

  private void sides() {
    add(below, new JLabel("From"));
    for (ViewSide side : ViewSide.values()) {
      JButton button = button(side.toString(), "side." + side.name().toLowerCase(Locale.ROOT));
      button.setToolTipText("Look from here (Alt+" + (side.ordinal() + 1) + ")");
      button.addActionListener(e -> view.lookFrom(side));
      add(below, button);
    }
    JButton fit = button("Fit", "fit");
    fit.setToolTipText("Bring all into the window (Alt+0)");
    fit.addActionListener(e -> view.fit());
    add(below, fit);
    JToggleButton measure = new JToggleButton("Measure");
    measure.setName("measure");
    measure.setMargin(new Insets(2, 7, 2, 7));
    measure.setToolTipText(
        "Click two points for the straight distance between them (Ctrl+M); Escape ends it");
    measure.addActionListener(e -> view.setMeasuring(measure.isSelected()));
    view.onMeasuring(() -> measure.setSelected(view.isMeasuring()));
    add(below, measure);
  }

  private static JButton button(String text, String name) {
    JButton button = new JButton(text);
    button.setName(name);
    button.setMargin(new Insets(2, 7, 2, 7));
    return button;
  }

  /** The controls over the picture. */
  JPanel above() {
    return above;
  }

  /** The controls under it. */
  JPanel below() {
    return below;
  }
}
