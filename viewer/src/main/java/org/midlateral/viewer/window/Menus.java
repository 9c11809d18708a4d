package org.midlateral.viewer.window;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.swing.Box;
import javax.swing.JButton;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JOptionPane;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.view.FingerView;
import org.midlateral.viewer.view.ViewSide;

/** The menus, and what their items do. */
final class Menus {
  private final MainWindow window;
  private final Session session;
  private final FingerView view;
  private final MenuAction undo;
  private final MenuAction redo;
  private final JToggleButton teach = new JToggleButton("Lesson");
  private final JMenuBar bar = new JMenuBar();

  Menus(MainWindow window, Session session, FingerView view) {
    this.window = window;
    this.session = session;
    this.view = view;
    undo = new MenuAction("Undo", 'U', "ctrl Z", session::undo);
    redo = new MenuAction("Redo", 'R', "ctrl shift Z", session::redo);
    bar.add(file());
    bar.add(edit());
    bar.add(look());
    bar.add(help());
    bar.add(Box.createHorizontalGlue());
    teach.setName("do.lesson");
    teach.setToolTipText("Wraps from shallow to closed, side by side (Ctrl+L)");
    teach.addActionListener(e -> window.teach(teach.isSelected()));
    bar.add(teach);
    for (MenuAction verb : new MenuAction[] {undo, redo}) {
      bar.add(button(verb));
    }
    bar.add(button(new MenuAction("Export all files", 'E', "", this::export)));
    KeyStroke y = KeyStroke.getKeyStroke("ctrl Y");
    bar.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(y, "redo");
    bar.getActionMap().put("redo", redo);
  }

  private static JButton button(MenuAction verb) {
    JButton button = new JButton(verb);
    button.setName("do." + verb.getValue("Name").toString().toLowerCase(Locale.ROOT));
    return button;
  }

  private static JMenu menu(String name, char mnemonic) {
    JMenu menu = new JMenu(name);
    menu.setMnemonic(mnemonic);
    return menu;
  }

  void teaching(boolean on) {
    teach.setSelected(on);
  }

  JMenuBar bar() {
    return bar;
  }

  void changed() {
    undo.setEnabled(session.canUndo());
    redo.setEnabled(session.canRedo());
  }

  private JMenu file() {
    JMenu menu = menu("File", 'F');
    menu.add(new MenuAction("Open...", 'O', "ctrl O", this::open));
    JMenu samples = menu("Open a sample", 'A');
    for (Sample sample : Sample.values()) {
      samples.add(
          new MenuAction(
              sample.title(), (char) 0, "", () -> ifSafe(() -> session.openSample(sample))));
    }
    menu.add(samples);
    menu.addSeparator();
    menu.add(new MenuAction("Save", 'S', "ctrl S", this::save));
    menu.add(new MenuAction("Save as...", 'V', "ctrl shift S", this::saveAs));
    menu.addSeparator();
    menu.add(new MenuAction("Export all files...", 'E', "ctrl E", this::export));
    menu.add(new MenuAction("Save the picture...", 'P', "ctrl P", this::picture));
    menu.addSeparator();
    menu.add(new MenuAction("Quit", 'Q', "ctrl Q", this::leave));
    return menu;
  }

  private JMenu edit() {
    JMenu menu = menu("Edit", 'E');
    menu.add(undo);
    menu.add(redo);
    return menu;
  }

  private JMenu look() {
    JMenu menu = menu("View", 'V');
    for (ViewSide side : ViewSide.values()) {
      String key = Integer.toString(side.ordinal() + 1);
      MenuAction verb =
          new MenuAction(
              "From the " + side.toString().toLowerCase(Locale.ROOT) + " side",
              (char) 0,
              "alt " + key,
              () -> view.lookFrom(side));
      menu.add(verb);
      viewKey(key, verb);
    }
    MenuAction fit = new MenuAction("Fit to the window", 'F', "alt 0", view::fit);
    menu.add(fit);
    viewKey("0", fit);
    menu.addSeparator();
    menu.add(new MenuAction("Lesson", 'L', "ctrl L", () -> window.teach(!teach.isSelected())));
    JCheckBoxMenuItem dark = new JCheckBoxMenuItem("Dark appearance");
    dark.setMnemonic(KeyEvent.VK_D);
    dark.setAccelerator(KeyStroke.getKeyStroke("ctrl D"));
    dark.addActionListener(e -> window.wear(dark.isSelected()));
    menu.add(dark);
    return menu;
  }

  /** The bare digit works too, while the picture has the keys. */
  private void viewKey(String key, MenuAction verb) {
    view.getInputMap().put(KeyStroke.getKeyStroke(key), verb.getValue("Name"));
    view.getActionMap().put(verb.getValue("Name"), verb);
  }

  private JMenu help() {
    JMenu menu = menu("Help", 'H');
    menu.add(new MenuAction("Keys and mouse", 'K', "F1", () -> Notices.keys(window)));
    menu.add(
        new MenuAction(
            "Cautions", 'C', "", () -> Notices.cautions(window, window.made().orElse(null))));
    return menu;
  }

  private void open() {
    ifSafe(
        () ->
            FileDialogs.toOpen(window, session.file())
                .flatMap(window::open)
                .ifPresent(trouble -> Notices.trouble(window, trouble)));
  }

  /** Asks before unsaved changes are lost. */
  private void ifSafe(Runnable deed) {
    if (!session.isDirty()) {
      deed.run();
      return;
    }
    Object[] answers = {"Save", "Do not save", "Cancel"};
    int answer =
        JOptionPane.showOptionDialog(
            window,
            "The values were changed. Save them first?",
            "Unsaved values",
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.QUESTION_MESSAGE,
            null,
            answers,
            answers[0]);
    if (answer == 1 || answer == 0 && save()) {
      deed.run();
    }
  }

  private boolean save() {
    return session.file().map(this::save).orElseGet(this::saveAs);
  }

  private boolean saveAs() {
    String reference = session.draft().get("reference");
    return FileDialogs.toSave(window, session.file(), reference, "yaml")
        .map(this::save)
        .orElse(false);
  }

  private boolean save(Path path) {
    try {
      session.save(path);
      return true;
    } catch (Session.FileTrouble trouble) {
      Notices.trouble(window, trouble.getMessage());
      return false;
    }
  }

  private void export() {
    if (window.shown().isEmpty()) {
      Notices.trouble(window, "A refused design is not written; mend the values marked first.");
      return;
    }
    Optional<Path> folder = FileDialogs.folder(window, session.file());
    folder.ifPresent(to -> new ExportJob(window, session.draft(), to).start());
  }

  private void picture() {
    String reference = session.draft().get("reference");
    FileDialogs.toSave(window, Optional.empty(), reference, "png")
        .ifPresent(path -> Pictures.write(window, view.still(), path));
  }

  /** Ends the program, unless there is something to save and the user would rather stay. */
  void leave() {
    ifSafe(window::dispose);
  }
}
