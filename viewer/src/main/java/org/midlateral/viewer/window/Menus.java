package org.midlateral.viewer.window;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.Box;
import javax.swing.JButton;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import org.midlateral.viewer.dialog.FileDialogs;
import org.midlateral.viewer.dialog.MessageDialogs;
import org.midlateral.viewer.dialog.PictureFile;
import org.midlateral.viewer.dialog.WalkThrough;
import org.midlateral.viewer.memory.Settings;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.MadeDraft;
import org.midlateral.viewer.view.FingerView;
import org.midlateral.viewer.view.ViewSide;

/** The menus, and what their items do. */
final class Menus {
  private final JFrame window;
  private final WindowCommands commands;
  private final Session session;
  private final FingerView view;
  private final MenuAction undo;
  private final MenuAction redo;
  private final JToggleButton lessonButton = new JToggleButton("Lesson");
  private final JToggleButton compareButton = new JToggleButton("Compare");
  private final JMenuBar bar = new JMenuBar();
  private final JMenu recent = new JMenu("Open recent");
  private ExportJob exporting;

  /**
   * What the window does for a menu.
   *
   * @param showLesson shows the lesson, or the finger again
   * @param setDark changes the appearance
   * @param open opens a file, and gives what stood in the way
   * @param made gives what is made now
   * @param began makes the form ready for a new finger
   * @param compare keeps the design to compare others with it, or ends that
   * @param fullScreen fills the screen, or ends that
   * @param saveLesson saves a still of the lesson, where that is what is seen
   * @param settings what is remembered
   * @param used remembers a file that was opened or saved
   */
  record WindowCommands(
      Consumer<Boolean> showLesson,
      Consumer<Boolean> setDark,
      Function<Path, Optional<String>> open,
      Supplier<Optional<MadeDraft>> made,
      Runnable began,
      Consumer<Boolean> compare,
      Runnable fullScreen,
      BooleanSupplier saveLesson,
      Supplier<Settings> settings,
      Consumer<Path> used) {}

  Menus(JFrame window, WindowCommands commands, Session session, FingerView view) {
    this.window = window;
    this.commands = commands;
    this.session = session;
    this.view = view;
    undo = new MenuAction("Undo", 'U', "ctrl Z", session::undo);
    redo = new MenuAction("Redo", 'R', "ctrl shift Z", session::redo);
    bar.add(file());
    bar.add(edit());
    bar.add(look());
    bar.add(help());
    bar.add(Box.createHorizontalGlue());
    lessonButton.setName("do.lesson");
    lessonButton.setToolTipText("Troughs from shallow to closed, side by side (Ctrl+L)");
    lessonButton.addActionListener(e -> commands.showLesson().accept(lessonButton.isSelected()));
    bar.add(lessonButton);
    compareButton.setName("do.compare");
    compareButton.setToolTipText("Keep this design beside what is changed from now on (Ctrl+K)");
    compareButton.addActionListener(e -> commands.compare().accept(compareButton.isSelected()));
    bar.add(compareButton);
    bar.add(button(undo, "Take the last change back (Ctrl+Z)"));
    bar.add(button(redo, "Make it again (Ctrl+Y)"));
    bar.add(
        button(
            new MenuAction("Joint held", 'J', "", this::held),
            "At which angle the joint is held, what presses where, whether the closure does"
                + " (Ctrl+J)"));
    bar.add(
        button(
            new MenuAction("Export all files", 'E', "", this::export),
            "Solids, pattern, sheets and report into a folder (Ctrl+E)"));
    KeyStroke y = KeyStroke.getKeyStroke("ctrl Y");
    bar.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(y, "redo");
    bar.getActionMap().put("redo", redo);
  }

  private static JButton button(MenuAction action, String meaning) {
    JButton button = new JButton(action);
    button.setToolTipText(meaning);
    button.setName("do." + action.getValue("Name").toString().toLowerCase(Locale.ROOT));
    return button;
  }

  private static JMenu menu(String name, char mnemonic) {
    JMenu menu = new JMenu(name);
    menu.setMnemonic(mnemonic);
    return menu;
  }

  void setComparing(boolean on) {
    compareButton.setSelected(on);
  }

  void setLessonShown(boolean on) {
    lessonButton.setSelected(on);
  }

  JMenuBar bar() {
    return bar;
  }

  /** Shows the files that are remembered. */
  void remembered() {
    recent.removeAll();
    for (Path file : commands.settings().get().recent()) {
      MenuAction action =
          new MenuAction(file.getFileName().toString(), (char) 0, "", () -> openFile(file));
      action.putValue(Action.SHORT_DESCRIPTION, file.toString());
      recent.add(action);
    }
    recent.setEnabled(recent.getItemCount() > 0);
  }

  /** The folder that a file dialog begins in. */
  private Optional<Path> folder() {
    return session
        .file()
        .map(path -> path.toAbsolutePath().getParent())
        .or(() -> commands.settings().get().folder());
  }

  void changed() {
    undo.setEnabled(session.canUndo());
    redo.setEnabled(session.canRedo());
  }

  private JMenu file() {
    JMenu menu = menu("File", 'F');
    menu.add(new MenuAction("New finger...", 'N', "ctrl N", () -> ifSafe(this::begin)));
    menu.add(new MenuAction("Open...", 'O', "ctrl O", this::open));
    JMenu samples = menu("Open a sample", 'A');
    for (Sample sample : Sample.values()) {
      samples.add(
          new MenuAction(
              sample.title(), (char) 0, "", () -> ifSafe(() -> session.openSample(sample))));
    }
    menu.add(samples);
    recent.setMnemonic('R');
    menu.add(recent);
    menu.add(new MenuAction("Open a course...", 'C', "ctrl shift O", this::course));
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
      MenuAction action =
          new MenuAction(
              "From the " + side.toString().toLowerCase(Locale.ROOT) + " side",
              (char) 0,
              "alt " + key,
              () -> view.lookFrom(side));
      menu.add(action);
      viewKey(key, action);
    }
    MenuAction fit = new MenuAction("Fit to the window", 'F', "alt 0", view::fit);
    menu.add(fit);
    viewKey("0", fit);
    menu.add(
        new MenuAction(
            "Measure between two points",
            'M',
            "ctrl M",
            () -> view.setMeasuring(!view.isMeasuring())));
    menu.addSeparator();
    menu.add(new MenuAction("How the joint is held", 'H', "ctrl J", this::held));
    menu.add(
        new MenuAction(
            "Compare with this design",
            'C',
            "ctrl K",
            () -> commands.compare().accept(!compareButton.isSelected())));
    menu.add(
        new MenuAction(
            "Lesson",
            'L',
            "ctrl L",
            () -> commands.showLesson().accept(!lessonButton.isSelected())));
    menu.add(new MenuAction("Full screen", 'U', "F11", () -> commands.fullScreen().run()));
    JCheckBoxMenuItem dark = new JCheckBoxMenuItem("Dark appearance");
    dark.setMnemonic(KeyEvent.VK_D);
    dark.setAccelerator(KeyStroke.getKeyStroke("ctrl D"));
    dark.setSelected(commands.settings().get().dark());
    dark.addActionListener(e -> commands.setDark().accept(dark.isSelected()));
    menu.add(dark);
    return menu;
  }

  /** The bare digit works too, while the picture has the keys. */
  private void viewKey(String key, MenuAction action) {
    view.getInputMap().put(KeyStroke.getKeyStroke(key), action.getValue("Name"));
    view.getActionMap().put(action.getValue("Name"), action);
  }

  private JMenu help() {
    JMenu menu = menu("Help", 'H');
    menu.add(new MenuAction("Walk-through", 'W', "", () -> WalkThrough.open(window)));
    menu.add(new MenuAction("Keys and mouse", 'K', "F1", () -> MessageDialogs.keys(window)));
    menu.add(
        new MenuAction(
            "Cautions",
            'C',
            "",
            () -> MessageDialogs.cautions(window, commands.made().get().orElse(null))));
    return menu;
  }

  /** How the pieces will be made comes first: it decides what is asked at all. */
  private void begin() {
    String question = "How will the pieces be made?";
    switch (MessageDialogs.ask(
        window, "New finger", question, "Moulded by hand", "Printed", "Cancel")) {
      case 0 -> session.begin("hand");
      case 1 -> session.begin("print");
      default -> {
        return;
      }
    }
    commands.began().run();
  }

  private void open() {
    ifSafe(() -> FileDialogs.toOpen(window, folder()).ifPresent(this::opened));
  }

  /** Opens a file that was dropped, or is remembered. */
  void openFile(Path path) {
    ifSafe(() -> opened(path));
  }

  private void opened(Path path) {
    commands.open().apply(path).ifPresent(trouble -> MessageDialogs.trouble(window, trouble));
  }

  /** The weeks stand in a window of their own; the finger that is open stays. */
  private void course() {
    FileDialogs.toOpen(window, folder())
        .flatMap(path -> WeeksWindow.open(window, path))
        .ifPresent(trouble -> MessageDialogs.trouble(window, trouble));
  }

  /** Asks before unsaved changes are lost. */
  private void ifSafe(Runnable action) {
    if (!session.isDirty()) {
      action.run();
      return;
    }
    int answer =
        MessageDialogs.ask(
            window,
            "Unsaved values",
            "The values were changed. Save them first?",
            "Save",
            "Do not save",
            "Cancel");
    if (answer == 1 || answer == 0 && save()) {
      action.run();
    }
  }

  private boolean save() {
    if (session.isChangedOnDisk()) {
      int answer =
          MessageDialogs.ask(
              window,
              "Changed on the disk",
              session.file().orElseThrow() + " was changed by another program since it was opened.",
              "Save under another name",
              "Replace it",
              "Cancel");
      return switch (answer) {
        case 0 -> saveAs();
        case 1 -> session.file().map(this::save).orElse(false);
        default -> false;
      };
    }
    return session.file().map(this::save).orElseGet(this::saveAs);
  }

  private boolean saveAs() {
    String reference = session.draft().get("reference");
    return FileDialogs.toSave(window, folder(), session.file(), reference, "yaml")
        .map(this::save)
        .orElse(false);
  }

  private boolean save(Path path) {
    try {
      session.save(path);
      commands.used().accept(path);
      return true;
    } catch (Session.FileTrouble trouble) {
      MessageDialogs.trouble(window, trouble.getMessage());
      return false;
    }
  }

  private void export() {
    if (commands.made().get().flatMap(MadeDraft::shapes).isEmpty()) {
      MessageDialogs.trouble(
          window, "A refused design is not written; correct the values marked first.");
      return;
    }
    if (exporting != null && exporting.isRunning()) {
      MessageDialogs.trouble(window, "An export is still going on; wait for its end.");
      return;
    }
    String reference = session.draft().get("reference");
    FileDialogs.folder(window, folder(), reference)
        .map(chosen -> ExportFolder.in(chosen, reference))
        .ifPresent(this::export);
  }

  /** What would be replaced is asked before anything is computed. */
  private void export(ExportFolder folder) {
    Optional<String> question = folder.question();
    if (question.isEmpty() || FileDialogs.replace(window, question.get())) {
      // What was never saved is from no file.
      String place =
          session.file().map(f -> String.valueOf(f.getFileName())).orElse("an unsaved design");
      exporting =
          new ExportJob(window, session.draft(), place, folder.path(), question.isPresent());
      exporting.start();
    }
  }

  private void held() {
    Optional<DesignShapes> shown = commands.made().get().flatMap(MadeDraft::shapes);
    if (shown.isEmpty()) {
      MessageDialogs.trouble(window, "A refused design holds no joint; correct the values marked.");
      return;
    }
    BooleanSupplier wanted = () -> commands.made().get().flatMap(MadeDraft::shapes).equals(shown);
    new HoldingJob(window, shown.get().orthosis(), wanted).execute();
  }

  private void picture() {
    if (commands.saveLesson().getAsBoolean()) {
      return;
    }
    String reference = session.draft().get("reference");
    FileDialogs.toSave(window, folder(), Optional.empty(), reference, "png")
        .ifPresent(path -> PictureFile.write(window, view.still(), path));
  }

  /** Ends the program, unless there is something to save and the user would rather stay. */
  void leave() {
    if (exporting == null || !exporting.isRunning()) {
      ifSafe(window::dispose);
      return;
    }
    int answer =
        MessageDialogs.ask(
            window,
            "An export is going on",
            "Files are still being made. Quit when they are written?",
            "Quit after the export",
            "Cancel it and quit",
            "Stay");
    if (answer == 0 || answer == 1) {
      exporting.endWith(() -> ifSafe(window::dispose), answer == 1);
    }
  }
}
