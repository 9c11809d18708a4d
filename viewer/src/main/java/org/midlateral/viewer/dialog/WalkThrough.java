package org.midlateral.viewer.dialog;

import java.awt.BorderLayout;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.WindowConstants;
import org.midlateral.shared.SharedData;

/** The walk-through beside the window: its pages' titles, and the one that is chosen. */
public final class WalkThrough extends JDialog {
  private static final long serialVersionUID = 1;
  private static final String TITLE = "# ";
  private static final String FENCE = "```";

  /**
   * A page as it is read here: without its pictures, which stand in the samples.
   *
   * @param title its heading
   * @param text all under it
   */
  record Page(String title, String text) {
    static Page of(String name) {
      List<String> lines = SharedData.text(name).lines().toList();
      return new Page(lines.get(0).substring(TITLE.length()), read(lines.subList(1, lines.size())));
    }

    /** Paragraphs are broken where the window ends, and what is typed stands as it is. */
    private static String read(List<String> lines) {
      StringBuilder text = new StringBuilder();
      boolean typed = false;
      for (String line : lines) {
        if (line.startsWith(FENCE)) {
          typed = !typed;
        } else if (!line.startsWith("![")) {
          boolean goesOn = !typed && !line.isBlank() && !line.matches("([-|#*]|[0-9]+\\.).*");
          boolean open = text.length() > 0 && text.charAt(text.length() - 1) != '\n';
          text.append(goesOn && open ? " " : "\n");
          text.append(typed ? line : line.replaceFirst("^#+ ", "").strip());
        }
      }
      return text.toString().strip();
    }

    @Override
    public String toString() {
      return title;
    }
  }

  private WalkThrough(Window owner) {
    super(owner, "Walk-through", ModalityType.MODELESS);
    setName("walk-through");
    setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
    JTextArea text = new JTextArea();
    text.setName("walk-through.text");
    text.getAccessibleContext().setAccessibleName("The page");
    text.setEditable(false);
    text.setLineWrap(true);
    text.setWrapStyleWord(true);
    text.setBorder(BorderFactory.createEmptyBorder(12, 16, 12, 16));
    Page[] pages = SharedData.WALK_THROUGH.stream().map(Page::of).toArray(Page[]::new);
    JList<Page> list = new JList<>(pages);
    list.setName("walk-through.pages");
    list.getAccessibleContext().setAccessibleName("Pages");
    list.setCellRenderer(new DefaultListCellRenderer());
    list.setBorder(BorderFactory.createEmptyBorder(12, 12, 12, 12));
    list.addListSelectionListener(
        e -> {
          text.setText(list.getSelectedValue().text());
          text.setCaretPosition(0);
        });
    list.setSelectedIndex(0);
    add(new JScrollPane(list), BorderLayout.WEST);
    add(new JScrollPane(text), BorderLayout.CENTER);
    getRootPane()
        .registerKeyboardAction(
            e -> dispose(),
            KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    setSize(860, 600);
    setLocationRelativeTo(owner);
  }

  /** Opens it. */
  public static void open(Window owner) {
    new WalkThrough(owner).setVisible(true);
  }
}
