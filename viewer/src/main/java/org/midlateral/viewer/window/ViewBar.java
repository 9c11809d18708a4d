package org.midlateral.viewer.window;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JSlider;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.view.Choice;
import org.midlateral.viewer.view.FingerView;
import org.midlateral.viewer.view.Part;
import org.midlateral.viewer.view.Side;
import org.midlateral.viewer.view.SkinTone;
import org.midlateral.viewer.view.Visibility;

/** What is shown, how it is coloured, and from where it is seen. */
final class ViewBar {
  private static final int MOST_PULL = 30;

  private final FingerView view;
  private final JPanel above = new JPanel();
  private final JPanel below = new JPanel();
  private final JComboBox<Quantity> quantity = new JComboBox<>(Quantity.values());
  private final JSlider pull = new JSlider(0, MOST_PULL, 0);
  private final Consumer<SkinTone> onTone;

  ViewBar(FingerView view, Consumer<Quantity> onQuantity, Consumer<SkinTone> onTone) {
    this.view = view;
    this.onTone = onTone;
    above.setLayout(new BoxLayout(above, BoxLayout.Y_AXIS));
    above.setBorder(BorderFactory.createEmptyBorder(2, 4, 2, 4));
    JPanel parts = row();
    for (Part part : Part.values()) {
      parts.add(labelled(part.toString(), visibility(part)));
    }
    JPanel colours = row();
    quantity.setName("quantity");
    quantity.setRenderer(new Titles());
    quantity.addActionListener(e -> onQuantity.accept((Quantity) quantity.getSelectedItem()));
    colours.add(labelled("Colour pieces by", quantity));
    colours.add(labelled("Skin", tones()));
    above.add(parts);
    above.add(colours);
    sides();
  }

  private static JPanel row() {
    return new JPanel(new FlowLayout(FlowLayout.LEADING, 8, 3));
  }

  private static JPanel labelled(String text, Component control) {
    JPanel pair = new JPanel(new FlowLayout(FlowLayout.LEADING, 5, 0));
    JLabel label = new JLabel(text);
    label.setLabelFor(control);
    pair.add(label);
    pair.add(control);
    return pair;
  }

  private Component visibility(Part part) {
    Visibility[] ways =
        part == Part.MARKS
            ? new Visibility[] {Visibility.SHOWN, Visibility.HIDDEN}
            : Visibility.values();
    JComboBox<Visibility> box = new JComboBox<>(ways);
    box.setName("show." + part.name().toLowerCase(java.util.Locale.ROOT));
    box.getAccessibleContext().setAccessibleName("Show " + part);
    box.addActionListener(
        e -> view.choose(view.choice().with(part, (Visibility) box.getSelectedItem())));
    return box;
  }

  private Component tones() {
    JComboBox<SkinTone> box = new JComboBox<>(SkinTone.values());
    box.setName("tone");
    box.addActionListener(
        e -> {
          SkinTone tone = (SkinTone) box.getSelectedItem();
          view.choose(view.choice().withTone(tone));
          onTone.accept(tone);
        });
    return box;
  }

  private void sides() {
    below.setLayout(new FlowLayout(FlowLayout.LEADING, 5, 4));
    below.add(new JLabel("From"));
    for (Side side : Side.values()) {
      JButton button = new JButton(side.toString());
      button.setName("side." + side.name().toLowerCase(java.util.Locale.ROOT));
      button.setToolTipText(
          "Look from the "
              + side.toString().toLowerCase(java.util.Locale.ROOT)
              + " side (key "
              + (side.ordinal() + 1)
              + ")");
      button.setMargin(new java.awt.Insets(2, 6, 2, 6));
      button.addActionListener(e -> view.lookFrom(side));
      below.add(button);
    }
    JButton fit = new JButton("Fit");
    fit.setName("fit");
    fit.setToolTipText("Bring all into the window (key 0)");
    fit.setMargin(new java.awt.Insets(2, 6, 2, 6));
    fit.addActionListener(e -> view.fit());
    below.add(fit);
    pull.setName("pull");
    pull.setToolTipText("Pull the pieces off the finger");
    pull.getAccessibleContext().setAccessibleName("Pull apart");
    pull.setPreferredSize(new Dimension(110, pull.getPreferredSize().height));
    pull.addChangeListener(e -> view.choose(view.choice().withPull(pull.getValue())));
    below.add(labelled("Pull apart", pull));
  }

  /** The controls over the picture. */
  JPanel above() {
    return above;
  }

  /** The controls under it. */
  JPanel below() {
    return below;
  }

  Choice choice() {
    return view.choice();
  }

  private static final class Titles extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1;

    @Override
    public Component getListCellRendererComponent(
        JList<?> list, Object value, int index, boolean selected, boolean focused) {
      String text = value instanceof Quantity q ? q.title() : "";
      return super.getListCellRendererComponent(list, text, index, selected, focused);
    }
  }
}
