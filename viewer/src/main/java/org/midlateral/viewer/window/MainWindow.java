package org.midlateral.viewer.window;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.GraphicsDevice;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JSeparator;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import javax.swing.Timer;
import javax.swing.WindowConstants;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.key.ValueKind;
import org.midlateral.viewer.compare.DesignPair;
import org.midlateral.viewer.dialog.MessageDialogs;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.RiseEdit;
import org.midlateral.viewer.draft.UnitChange;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.drawing.WindowIcon;
import org.midlateral.viewer.form.Form;
import org.midlateral.viewer.form.ListChange;
import org.midlateral.viewer.lesson.Lesson;
import org.midlateral.viewer.memory.Settings;
import org.midlateral.viewer.memory.SettingsFolder;
import org.midlateral.viewer.render.OffscreenRenderer;
import org.midlateral.viewer.sample.Sample;
import org.midlateral.viewer.scene.DesignShapes;
import org.midlateral.viewer.scene.MadeDraft;
import org.midlateral.viewer.scene.Quantity;
import org.midlateral.viewer.section.Colouring;
import org.midlateral.viewer.section.SkinPressure;
import org.midlateral.viewer.view.FingerView;

/** The one window of the program. */
public final class MainWindow extends JFrame {
  private static final long serialVersionUID = 1;
  private static final int FORM_WIDTH = 382;
  private static final int SECTION_WIDTH = 322;
  private static final int QUIET_MILLIS = 1000;

  private final transient Session session = new Session(Sample.BULBOUS);
  private final transient MakingWorker making = new MakingWorker(this::take);
  private static final String NOT_MADE = "Not made yet: see the findings below.";
  private static final String EDITING_PAGE = "editing";
  private static final String LESSON_PAGE = "lesson";

  private final CardLayout cards = new CardLayout();
  private final JPanel pages = new JPanel();
  private final Lesson lesson;
  private final FingerView view;
  private final Form form;
  private final SectionCard section;
  private final FindingsBar findings;
  private JPanel bottom;
  private Rectangle windowed;
  private final transient ViewBar viewBar;
  private final transient Menus menus;
  private final transient InspectionWorker inspection = new InspectionWorker(this::inspected);
  private final transient ColouringWorker colouring = new ColouringWorker(this::coloured);
  private final DifferenceLine difference = new DifferenceLine();

  /** Inspecting begins when the design has been left alone for a moment. */
  private final Timer quiet = new Timer(QUIET_MILLIS, e -> inspect());

  /** While a value is being typed nothing is said about it. */
  private final Timer typing = new Timer(QUIET_MILLIS, e -> showFindings());

  private final transient WindowMemory memory;
  private transient MadeDraft made;
  private transient Optional<MadeDraft> kept = Optional.empty();
  private transient List<Finding> inspected;

  /** Whether inspecting is to begin anew. */
  private boolean dropped;

  private Quantity coloured;

  private Quantity quantity = Quantity.NONE;
  private Palette palette = Palette.LIGHT;
  private transient Optional<SkinPressure> pressure = Optional.empty();
  private double changeToShownMillis = Double.NaN;

  /**
   * A window as it was left the last time, not yet on the screen.
   *
   * @param renderer draws its pictures
   * @param folder where it is remembered
   */
  public static MainWindow open(OffscreenRenderer renderer, SettingsFolder folder) {
    prepare(folder);
    return new MainWindow(renderer, folder, folder.read());
  }

  /** Loads looks and fonts, which a window needs and the renderer does not. */
  public static void prepare(SettingsFolder folder) {
    WindowClass.set();
    Appearance.apply(folder.read().dark());
  }

  private MainWindow(OffscreenRenderer renderer, SettingsFolder folder, Settings settings) {
    memory = new WindowMemory(this, session, folder, settings);
    view = new FingerView(renderer);
    view.setName("view");
    form = new Form(this::edit, this::items, this::takeOut, this::left);
    lesson = new Lesson(renderer, new Slides(this, () -> memory.settings().folder()));
    section = new SectionCard(view::setStation);
    findings = new FindingsBar(form::goTo, () -> MessageDialogs.cautions(this, made));
    view.onStation(section::moveTo);
    view.onRise(new RiseEdits(session, form::goTo));
    viewBar = new ViewBar(view, this::colourBy, section::setTone);
    menus =
        new Menus(
            this,
            new Menus.WindowCommands(
                this::showLesson,
                this::setDark,
                this::open,
                this::made,
                this::began,
                this::compare,
                () -> setFullScreen(!isFullScreen()),
                this::saveSeen,
                memory::settings,
                this::used),
            session,
            view);
    setJMenuBar(menus.bar());
    arrange();
    quiet.setRepeats(false);
    typing.setRepeats(false);
    session.onChange(this::changed);
    session.onOpen(this::opened);
    setIconImages(WindowIcon.images());
    listen();
    memory.place();
    if (settings.dark()) {
      setDark(true);
    }
    menus.remembered();
    changed();
  }

  /** To what happens to the window itself, to Escape and to files that are dropped. */
  private void listen() {
    setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowOpened(WindowEvent e) {
            form.goTo("circumference.proximal-phalanx");
          }

          @Override
          public void windowClosing(WindowEvent e) {
            menus.leave();
          }
        });
    JComponent root = getRootPane();
    root.registerKeyboardAction(
        e -> {
          if (!view.escape() && isFullScreen()) {
            setFullScreen(false);
          }
        },
        KeyStroke.getKeyStroke("ESCAPE"),
        JComponent.WHEN_IN_FOCUSED_WINDOW);
    root.setTransferHandler(new FileDrop(menus::openFile));
  }

  private void used(Path file) {
    memory.used(file);
    menus.remembered();
  }

  /** Asks whether to take up what a former process left unsaved. */
  public void offerUnsaved() {
    memory.offerUnsaved();
  }

  private void arrange() {
    JPanel middle = new JPanel(new BorderLayout());
    middle.add(viewBar.above(), BorderLayout.NORTH);
    middle.add(view, BorderLayout.CENTER);
    JPanel under = new JPanel(new BorderLayout());
    under.add(difference, BorderLayout.NORTH);
    under.add(viewBar.below(), BorderLayout.CENTER);
    middle.add(under, BorderLayout.SOUTH);
    form.setPreferredSize(new Dimension(FORM_WIDTH, 100));
    section.setPreferredSize(new Dimension(SECTION_WIDTH, 100));
    JPanel all = new JPanel(new BorderLayout());
    all.add(beside(form, BorderLayout.EAST), BorderLayout.WEST);
    all.add(middle, BorderLayout.CENTER);
    all.add(beside(section, BorderLayout.WEST), BorderLayout.EAST);

    pages.setLayout(cards);
    pages.add(all, EDITING_PAGE);
    pages.add(lesson, LESSON_PAGE);
    JPanel content = new JPanel(new BorderLayout());
    content.add(pages);
    bottom = beside(findings, BorderLayout.NORTH);
    content.add(bottom, BorderLayout.SOUTH);
    setContentPane(content);
    setMinimumSize(new Dimension(1000, 660));
    setSize(1280, 800);
  }

  /** A component with a line along one of its edges. */
  private static JPanel beside(JComponent component, String edge) {
    boolean level = edge.equals(BorderLayout.NORTH);
    JPanel panel = new JPanel(new BorderLayout());
    panel.add(component);
    panel.add(new JSeparator(level ? SwingConstants.HORIZONTAL : SwingConstants.VERTICAL), edge);
    return panel;
  }

  private void changed() {
    if (inspected == null) {
      // It would only hold up what is made now.
      quiet.stop();
      inspection.drop();
      dropped = true;
    }
    if (made != null && !made.draft().equals(session.draft())) {
      lesson.clear(NOT_MADE);
    }
    if (colouring.like(quantity).isPresent()) {
      colouring.drop();
    }
    make();
    memory.changed();
    setTitle(session.title() + " – Midlateral");
    form.show(session.draft());
    menus.changed();
  }

  private void make() {
    making.ask(session.draft(), made, kept, quantity, colouring.like(quantity));
  }

  /**
   * Another finger: nothing of the former is shown any more, nor comes later; the new one is seen
   * whole, and cut at its PIP axis.
   */
  private void opened() {
    making.forget();
    inspection.forget();
    colouring.forget();
    compare(false);
    quiet.stop();
    typing.stop();
    made = null;
    inspected = null;
    coloured = null;
    clear();
    form.toTop();
    form.showMessages(List.of(), List.of(), palette.caution(), palette.refusal());
    findings.show(List.of(), List.of(), true);
    view.fitNext();
    section.resetStation();
  }

  /** There is no picture, figure or lesson of what is open. */
  private void clear() {
    view.clear(NOT_MADE);
    section.clear();
    lesson.clear(NOT_MADE);
  }

  private void edit(String path, String text) {
    if (path.equals("unit")) {
      changeUnit(new UnitChange(session.draft(), session.draft().with(path, text).unit()));
      return;
    }
    if (Draft.key(path)
        .filter(k -> k.kind().isNumeric() || k.kind() == ValueKind.TEXT)
        .isPresent()) {
      typing.restart();
    }
    session.edit(path, text);
  }

  /** Only who measured knows what the numbers are in. */
  private void changeUnit(UnitChange change) {
    int answer = 1;
    if (change.isToBeAsked()) {
      String read = "Read the numbers in " + change.to();
      String question =
          "The unit was " + session.draft().unit() + ". What becomes of the numbers typed in?";
      answer =
          MessageDialogs.ask(this, "Another unit", question, "Convert the numbers", read, "Cancel");
    }
    switch (answer) {
      case 0 -> session.replace(change.converted());
      case 1 -> session.replace(change.readAnew());
      default -> form.show(session.draft());
    }
  }

  private void takeOut(String path) {
    session.replace(session.draft().without(path));
  }

  /** A field was left: what was typed there is whole. */
  private void left(String path) {
    session.settle(path);
    if (typing.isRunning()) {
      typing.stop();
      showFindings();
    }
  }

  private void began() {
    showLesson(false);
    form.foldTheRest();
    form.goTo("reference");
  }

  private void items(ListChange change) {
    Draft draft = session.draft();
    if (change.remove() >= 0) {
      session.replace(draft.withoutItem(change.list(), change.remove()));
      return;
    }
    double station = shown().map(v -> v.orthosis().digit().pipAxis()).orElse(0.0);
    session.replace(RiseEdit.added(draft, station, 0));
  }

  private void colourBy(Quantity other) {
    quantity = other;
    make();
  }

  private void take(MakingWorker.MadeAnswer answer) {
    if (made == null || !made.draft().equals(answer.made().draft())) {
      made = answer.made();
      inspected = null;
      dropped = true;
    }
    if (dropped) {
      dropped = false;
      quiet.restart();
    }
    boolean slow = answer.asked().quantity().isSlow() && made.shapes().isPresent();
    coloured = slow ? null : answer.asked().quantity();
    if (made.shapes().isEmpty()) {
      showFindings();
      return;
    }
    pressure = answer.colouring().pressure();
    boolean drawn = view.isDrawn();
    view.whenNextShown(
        () -> {
          changeToShownMillis = (System.nanoTime() - answer.asked().since()) / 1e6;
          follow(answer);
        });
    boolean passing = answer.colouring().isPassing();
    Colouring beside =
        passing ? colouring.ofKept(kept) : ofKept(answer.asked().kept(), answer.ofKept());
    view.show(made.shapes().get(), answer.colouring(), beside);
    if (slow) {
      view.setNote("Computing the " + answer.asked().quantity().word() + " ...");
    }
    if (!drawn) {
      follow(answer);
    }
    showFindings();
    tellDifference();
    if (lesson.isShowing()) {
      lesson.follow(made.shapes().get());
    }
  }

  /**
   * What waits until the picture is on the screen, since it would take the cores that draw it: the
   * section, and colours that take long. Nothing where another was made or opened meanwhile.
   */
  private void follow(MakingWorker.MadeAnswer answer) {
    if (made == null || !made.draft().equals(answer.made().draft()) || made.shapes().isEmpty()) {
      return;
    }
    section.show(made.shapes().get());
    section.setPressure(pressure);
    if (answer.asked().quantity().isSlow()) {
      colouring.ask(made, kept, answer.asked().quantity(), answer.colouring().isPassing());
    }
  }

  /** Keeps the design that is shown beside what is made next, or shows one alone again. */
  private void compare(boolean on) {
    kept = on ? Optional.ofNullable(made).filter(m -> m.shapes().isPresent()) : Optional.empty();
    if (on && kept.isEmpty()) {
      MessageDialogs.trouble(this, "A refused design is not compared; correct the values marked.");
    }
    menus.setComparing(kept.isPresent());
    view.keep(kept.flatMap(MadeDraft::shapes));
    difference.setVisible(kept.isPresent());
    tellDifference();
    if (kept.isPresent() && quantity != Quantity.NONE) {
      make();
    }
  }

  /** The colours of the design that is kept; those of another that was are of no use. */
  private Colouring ofKept(Optional<MadeDraft> coloured, Colouring colouring) {
    return coloured.equals(kept) ? colouring : Colouring.PLAIN;
  }

  private void tellDifference() {
    difference.tell(
        kept.filter(k -> shown().isPresent()).map(before -> new DesignPair(before, made)));
  }

  private void inspect() {
    if (made.order().isPresent()) {
      inspection.ask(made);
    }
  }

  private void coloured(ColouringWorker.ColourAnswer answer) {
    boolean current = answer.asked().made().draft().equals(made.draft());
    if (current && answer.asked().quantity() == quantity && made.shapes().isPresent()) {
      coloured = quantity;
      view.show(
          made.shapes().get(), answer.colouring(), ofKept(answer.asked().kept(), answer.ofKept()));
      view.setNote(answer.colouring().note());
      pressure = answer.colouring().pressure();
      section.setPressure(pressure);
    }
  }

  private void inspected(InspectionWorker.Inspected answer) {
    if (answer.made().draft().equals(made.draft())) {
      inspected = answer.findings();
      if (answer.shellDropped()) {
        made = answer.made();
        make();
      }
      showFindings();
    }
  }

  /**
   * Shows what was found so far, in the form and below; where there is nothing made, empties what
   * showed it. A value that is still being typed has a second before it is judged.
   */
  private void showFindings() {
    if (made == null || typing.isRunning()) {
      return;
    }
    if (made.shapes().isEmpty()) {
      clear();
    }
    List<Finding> all = inspected == null ? made.findings() : inspected;
    List<String> missing = made.draft().missing();
    List<InputError> wrong =
        made.errors().stream().filter(error -> !missing.contains(error.key())).toList();
    form.showMessages(wrong, all, palette.caution(), palette.refusal());
    findings.show(missing, wrong, all, made.order().isPresent() && inspected == null);
  }

  /** Shows the lesson, or the finger again. */
  void showLesson(boolean on) {
    if (on && shown().isEmpty()) {
      MessageDialogs.trouble(this, "The lesson needs a finger; correct the values marked first.");
      menus.setLessonShown(false);
      return;
    }
    menus.setLessonShown(on);
    cards.show(pages, on ? LESSON_PAGE : EDITING_PAGE);
    if (on) {
      lesson.begin(shown().orElseThrow());
    } else {
      view.requestFocusInWindow();
    }
  }

  /** All of the screen, without the findings, or as it was. */
  void setFullScreen(boolean on) {
    GraphicsDevice screen = getGraphicsConfiguration().getDevice();
    if (on) {
      windowed = getBounds();
    }
    bottom.setVisible(!on);
    screen.setFullScreenWindow(on ? this : null);
    if (!on && windowed != null) {
      setBounds(windowed);
    }
  }

  boolean isFullScreen() {
    return !bottom.isVisible();
  }

  /** Saves what is seen: the finger, or the lesson's step. */
  private boolean saveSeen() {
    if (lesson.isShowing()) {
      lesson.still();
      return true;
    }
    return false;
  }

  Lesson lesson() {
    return lesson;
  }

  /** The design that is made now; empty while there is none. */
  Optional<DesignShapes> shown() {
    return made == null ? Optional.empty() : made.shapes();
  }

  /** What the design that is made now was made from; empty while there is none. */
  public Optional<Order> order() {
    return shown().map(view -> view.orthosis().order());
  }

  /** Whether what was last made is what the form and the colour box say. */
  boolean isCurrent() {
    return made != null && made.draft().equals(session.draft()) && coloured == quantity;
  }

  /** Whether what was last made is about to be inspected, once it is left alone. */
  boolean isInspectionDue() {
    return quiet.isRunning();
  }

  Optional<MadeDraft> made() {
    return Optional.ofNullable(made);
  }

  /** Changes to the light or the dark appearance. */
  void setDark(boolean dark) {
    palette = Palette.of(dark);
    memory.setDark(dark);
    Appearance.apply(dark);
    view.setPalette(palette);
    section.setPalette(palette);
    lesson.setPalette(palette);
    findings.setPalette(palette);
    if (made != null) {
      showFindings();
    }
  }

  /** Opens a file or, where that fails, says why in one sentence. */
  public Optional<String> open(Path file) {
    try {
      session.open(file);
      used(file);
      return Optional.empty();
    } catch (Session.FileTrouble trouble) {
      return Optional.of(trouble.getMessage());
    }
  }

  /** Goes to the field of a key. */
  void goTo(String path) {
    form.goTo(path);
  }

  /** Time from the last change to its picture on the screen (ms). */
  double changeToShownMillis() {
    return changeToShownMillis;
  }

  /** What is said in the findings, for tests. */
  List<String> findingTexts() {
    return findings.texts();
  }

  Session session() {
    return session;
  }

  @Override
  public void dispose() {
    memory.close(getExtendedState() == NORMAL && !isFullScreen());
    making.close();
    inspection.close();
    colouring.close();
    difference.close();
    quiet.stop();
    typing.stop();
    lesson.close();
    super.dispose();
  }
}
