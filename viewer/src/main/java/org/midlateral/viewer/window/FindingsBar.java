package org.midlateral.viewer.window;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.UIManager;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Finding.Severity;
import org.midlateral.measurement.InputError;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.form.Form;

/** All that was found, always in view; and the caution that always holds. */
final class FindingsBar extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int FRAME = 1;
  private static final String ALWAYS =
      "Estimate, for comparison; does not clear a piece for use. Follow local rules.";

  private final DefaultListModel<Line> lines = new DefaultListModel<>();
  private final JList<Line> list =
      new JList<>(lines) {
        private static final long serialVersionUID = 1;

        @Override
        public boolean getScrollableTracksViewportWidth() {
          return true;
        }
      };
  private final JLabel head = new JLabel("Findings");
  private transient Palette palette = Palette.LIGHT;

  /**
   * One line.
   *
   * @param severity null where all is well
   * @param key the key it is about; empty for none
   * @param text what is the matter, and with what
   */
  private record Line(Severity severity, String key, String text) {
    /** One that names its key. */
    static Line about(Severity severity, String key, String text) {
      boolean named = key.isEmpty() || text.contains(key);
      return new Line(severity, key, named ? text : key + ": " + text);
    }

    String word() {
      if (severity == null) {
        return "";
      }
      return switch (severity) {
        case REFUSAL -> "Refused";
        case CAUTION -> "Caution";
        case NOTE -> "Note";
      };
    }

    @Override
    public String toString() {
      return (severity == null ? "" : word() + "  ") + text;
    }
  }

  FindingsBar(Consumer<String> goTo, Runnable showCautions) {
    super(new BorderLayout());
    setPreferredSize(new Dimension(100, 100));
    setMinimumSize(new Dimension(100, 70));
    head.setFont(head.getFont().deriveFont(Font.BOLD));
    head.setLabelFor(list);
    JLabel always = new JLabel(ALWAYS);
    always.setName("always");
    head.setToolTipText("Refusals, cautions and notes on these values, the worst first");
    JButton cautions = new JButton("All cautions");
    cautions.setName("cautions");
    cautions.setToolTipText("Everything to mind before and while the orthosis is worn");
    cautions.setMargin(new java.awt.Insets(1, 8, 1, 8));
    cautions.addActionListener(e -> showCautions.run());
    JPanel right = new JPanel(new java.awt.FlowLayout(java.awt.FlowLayout.TRAILING, 8, 0));
    right.add(always);
    right.add(cautions);
    JPanel top = new JPanel(new BorderLayout());
    top.setBorder(BorderFactory.createEmptyBorder(4, 12, 2, 8));
    top.add(head, BorderLayout.WEST);
    top.add(right, BorderLayout.EAST);
    add(top, BorderLayout.NORTH);
    list.setName("findings");
    list.setCellRenderer(new FindingRenderer());
    list.getAccessibleContext().setAccessibleName("Findings");
    // A list keeps its lines' heights: it has to ask again when it has got another width.
    list.addComponentListener(
        new ComponentAdapter() {
          private int width;

          @Override
          public void componentResized(ComponentEvent e) {
            if (list.getWidth() != width) {
              width = list.getWidth();
              list.setFixedCellHeight(1);
              list.setFixedCellHeight(-1);
            }
          }
        });
    list.setToolTipText("Enter, or a click, goes to the field a finding is about");
    open(goTo);
    focus(false);
    list.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            focus(true);
          }

          @Override
          public void focusLost(FocusEvent e) {
            focus(false);
          }
        });
    JScrollPane scroll = new JScrollPane(list);
    scroll.setBorder(BorderFactory.createEmptyBorder(0, 4, 2, 4));
    add(scroll, BorderLayout.CENTER);
  }

  /** A frame while it has the keys, whether or not a finding is chosen. */
  private void focus(boolean has) {
    Color frame = UIManager.getColor("Component.focusColor");
    list.setBorder(
        has
            ? BorderFactory.createLineBorder(frame, FRAME)
            : BorderFactory.createEmptyBorder(FRAME, FRAME, FRAME, FRAME));
  }

  private void open(Consumer<String> goTo) {
    Runnable go =
        () -> {
          Line line = list.getSelectedValue();
          if (line != null && !line.key().isEmpty()) {
            goTo.accept(line.key());
          }
        };
    list.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "go");
    list.getActionMap()
        .put(
            "go",
            new AbstractAction() {
              private static final long serialVersionUID = 1;

              @Override
              public void actionPerformed(ActionEvent e) {
                go.run();
              }
            });
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent e) {
            go.run();
          }
        });
  }

  /**
   * Shows what was found.
   *
   * @param more whether the pieces are still being inspected
   */
  void show(List<InputError> errors, List<Finding> findings, boolean more) {
    show(List.of(), errors, findings, more);
  }

  /**
   * The same of a form that is not filled in.
   *
   * @param missing keys that are still empty
   */
  void show(List<String> missing, List<InputError> errors, List<Finding> findings, boolean more) {
    List<Line> found = new ArrayList<>();
    if (!missing.isEmpty()) {
      String text =
          missing.size()
              + " still to be filled in: "
              + missing.stream().map(Form::words).collect(Collectors.joining("; "));
      found.add(new Line(Severity.NOTE, missing.get(0), text));
    }
    for (InputError error : errors) {
      found.add(Line.about(Severity.REFUSAL, error.key(), error.text()));
    }
    for (Severity severity : List.of(Severity.REFUSAL, Severity.CAUTION, Severity.NOTE)) {
      for (Finding finding : findings) {
        if (finding.severity() == severity) {
          String key = finding.key() == null ? "" : finding.key();
          found.add(Line.about(severity, key, finding.text()));
        }
      }
    }
    String count = found.isEmpty() ? "none" : Integer.toString(found.size());
    head.setText("Findings: " + count + (more ? " so far, checking the pieces" : ""));
    if (found.isEmpty()) {
      found.add(
          new Line(
              null,
              "",
              more
                  ? "Nothing found so far; the pieces are still being checked."
                  : "Nothing was found with these values."));
    }
    lines.clear();
    lines.addAll(found);
  }

  /** The lines as they read. */
  List<String> texts() {
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      texts.add(lines.get(i).toString());
    }
    return texts;
  }

  void setPalette(Palette other) {
    palette = other;
    repaint();
  }

  /** A line is broken where the list ends. */
  private final class FindingRenderer implements ListCellRenderer<Line> {
    private final JTextArea area = new JTextArea();

    FindingRenderer() {
      area.setLineWrap(true);
      area.setWrapStyleWord(true);
      area.setBorder(BorderFactory.createEmptyBorder(1, 6, 1, 6));
    }

    @Override
    public Component getListCellRendererComponent(
        JList<? extends Line> of, Line line, int index, boolean selected, boolean focused) {
      area.setText(line.toString());
      area.setFont(of.getFont());
      area.setBackground(selected ? of.getSelectionBackground() : of.getBackground());
      area.setForeground(selected ? of.getSelectionForeground() : colour(line.severity()));
      area.setSize(Math.max(1, of.getWidth()), Short.MAX_VALUE);
      return area;
    }

    private Color colour(Severity severity) {
      if (severity == null) {
        return palette.ink();
      }
      return switch (severity) {
        case REFUSAL -> palette.refusal();
        case CAUTION -> palette.caution();
        case NOTE -> palette.ink();
      };
    }
  }
}
