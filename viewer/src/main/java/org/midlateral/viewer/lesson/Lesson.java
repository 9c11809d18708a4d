package org.midlateral.viewer.lesson;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.midlateral.measurement.DesignRefused;
import org.midlateral.measurement.Order;
import org.midlateral.viewer.background.Worker;
import org.midlateral.viewer.drawing.Palette;
import org.midlateral.viewer.render.OffscreenRenderer;
import org.midlateral.viewer.scene.DesignShapes;

/** The lesson with its steps. */
public final class Lesson extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int TICK_MILLIS = 33;
  private static final double PERIOD_MILLIS = 2600;

  /** Size of the sentence, and of the lesson that it is for (px). */
  private static final double TEXT_SIZE = 15;

  private static final double USUAL_WIDTH = 1280;
  private static final double USUAL_HEIGHT = 720;
  private static final Dimension SLIDE = new Dimension(1920, 1080);

  /** Of one coming and going, at 30 a second. */
  private static final int FRAMES = 78;

  /** Takes up pictures that are to be saved. */
  public interface SlideSink {
    /** One picture, and a name for it. */
    void still(BufferedImage image, String name);

    /** Where a row of pictures goes, one after another; empty where it is called off. */
    Optional<Consumer<BufferedImage>> frames(String name);

    /** All pictures of a row were given. */
    void ended();
  }

  private final LessonView view;
  private final JTextArea text = new JTextArea(2, 40);
  private final JLabel count = new JLabel();
  private final JButton back = new JButton("Back");
  private final JButton next = new JButton("Next");
  private final JButton play = new JButton("Hold still");
  private final Timer clock = new Timer(TICK_MILLIS, e -> tick());
  private final transient Worker<Order, Object> worker;
  private final transient OffscreenRenderer renderer;
  private final transient SlideSink slides;
  private transient Comparison comparison;
  private transient Order asked;
  private transient Step step = Step.FIRST;
  private String title = "";
  private String reference = "";
  private boolean held;
  private long began = System.nanoTime();

  /**
   * A lesson without a finger yet.
   *
   * @param renderer draws it
   * @param slides take up pictures to save
   */
  public Lesson(OffscreenRenderer renderer, SlideSink slides) {
    super(new BorderLayout());
    this.renderer = renderer;
    this.slides = slides;
    view = new LessonView(renderer);
    view.setName("lesson.view");
    worker = new Worker<>("lesson", Lesson::compare, SwingUtilities::invokeLater, this::take);
    add(head(), BorderLayout.NORTH);
    add(view, BorderLayout.CENTER);
    key("RIGHT", this::forward);
    key("PAGE_DOWN", this::forward);
    key("LEFT", this::back);
    key("PAGE_UP", this::back);
    addHierarchyListener(e -> run());
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            double times = Math.min(getWidth() / USUAL_WIDTH, getHeight() / USUAL_HEIGHT);
            text.setFont(text.getFont().deriveFont((float) (TEXT_SIZE * Math.max(1, times))));
          }
        });
  }

  private JPanel head() {
    text.setName("lesson.text");
    text.setEditable(false);
    text.setFocusable(false);
    text.setLineWrap(true);
    text.setWrapStyleWord(true);
    text.setOpaque(false);
    text.setFont(text.getFont().deriveFont(Font.PLAIN, (float) TEXT_SIZE));
    back.setName("lesson.back");
    back.addActionListener(e -> back());
    next.setName("lesson.next");
    next.addActionListener(e -> forward());
    play.addActionListener(e -> hold(!held));
    JButton still = new JButton("Save a still");
    still.setName("lesson.still");
    still.addActionListener(e -> still());
    JButton frames = new JButton("Save frames");
    frames.setName("lesson.frames");
    frames.setToolTipText("The load coming on and going off, as numbered pictures for a film");
    frames.addActionListener(e -> frames());
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING, 6, 0));
    count.setName("lesson.count");
    count.setToolTipText(
        "Step of the lesson; Right and Left, or Page Down and Page Up, go on and back");
    back.setToolTipText("The step before (Left or Page Up)");
    next.setToolTipText("The next step (Right or Page Down)");
    play.setToolTipText("Hold the pieces at full load, or let it come and go");
    still.setToolTipText("A picture of this step for a slide (Ctrl+P)");
    buttons.add(count);
    buttons.add(back);
    buttons.add(next);
    buttons.add(play);
    buttons.add(still);
    buttons.add(frames);
    JPanel head = new JPanel(new BorderLayout(12, 0));
    head.setBorder(BorderFactory.createEmptyBorder(10, 14, 8, 10));
    head.add(text, BorderLayout.CENTER);
    head.add(buttons, BorderLayout.EAST);
    return head;
  }

  private void key(String stroke, Runnable action) {
    for (JComponent at : new JComponent[] {this, view}) {
      int when = at == this ? WHEN_ANCESTOR_OF_FOCUSED_COMPONENT : WHEN_FOCUSED;
      at.getInputMap(when).put(KeyStroke.getKeyStroke(stroke), "lesson." + stroke);
      at.getActionMap()
          .put(
              "lesson." + stroke,
              new AbstractAction() {
                private static final long serialVersionUID = 1;

                @Override
                public void actionPerformed(ActionEvent e) {
                  action.run();
                }
              });
    }
  }

  /** Gives the comparison of an order, or the sentence that tells why there is none. */
  private static Object compare(Order order) {
    try {
      return Comparison.of(order);
    } catch (DesignRefused e) {
      return e.finding().text();
    }
  }

  /** Begins on a finger, from the first step. */
  public void begin(DesignShapes design) {
    step = Step.FIRST;
    view.requestFocusInWindow();
    follow(design);
  }

  /** Goes on at the same step with another finger, or with the same one changed. */
  public void follow(DesignShapes design) {
    Order order = design.orthosis().order();
    if (order.equals(asked)) {
      if (comparison != null) {
        show(step);
      }
      return;
    }
    clear("Making the troughs for this finger ...");
    asked = order;
    title = design.title();
    reference = order.measurements().reference();
    worker.ask(order);
  }

  /** Shows nothing, and says why. */
  public void clear(String why) {
    worker.forget();
    asked = null;
    comparison = null;
    title = "";
    view.clear();
    say(why);
  }

  private void take(Object answer) {
    if (answer instanceof Comparison made) {
      comparison = made;
      view.show(made, title);
      show(step);
    } else {
      say(answer.toString());
    }
  }

  private void say(String sentence) {
    text.setText(sentence);
    count.setText("");
    back.setEnabled(false);
    next.setEnabled(false);
  }

  private void show(Step other) {
    step = other;
    began = System.nanoTime();
    text.setText(step.text(comparison));
    count.setText((step.number() + 1) + " of " + (Step.last(comparison) + 1));
    back.setEnabled(step.number() > 0);
    next.setEnabled(step.number() < Step.last(comparison));
    view.setStep(step);
    if (!held) {
      // Nothing of the load is on yet.
      view.setPhase(0);
    }
  }

  private void forward() {
    if (comparison != null && step.number() < Step.last(comparison)) {
      show(new Step(step.number() + 1));
    }
  }

  private void back() {
    if (comparison != null && step.number() > 0) {
      show(new Step(step.number() - 1));
    }
  }

  /** Holds the pieces at full load, or lets them move. */
  public void hold(boolean still) {
    held = still;
    play.setText(held ? "Let it move" : "Hold still");
    began = System.nanoTime();
    run();
  }

  private void run() {
    if (held) {
      clock.stop();
      view.setPhase(1);
    } else if (isShowing()) {
      clock.start();
    } else {
      clock.stop();
    }
  }

  /** The load comes on, stays a while, and goes off again. */
  private void tick() {
    if (comparison != null && step.number() > 0) {
      double turn = 2 * Math.PI * (System.nanoTime() - began) / 1e6 / PERIOD_MILLIS;
      view.setPhase(phase(turn));
    }
  }

  /** The share of the load at a part of its coming and going (rad). */
  private static double phase(double turn) {
    return Math.min(1, 0.62 * (1 - Math.cos(turn)));
  }

  /** Saves a picture of the step at full load, at a slide's size that is asked for. */
  public void still() {
    if (comparison == null) {
      return;
    }
    hold(true);
    slideSize()
        .ifPresent(
            size ->
                view.whenSettled(
                    () ->
                        view.forSlides(renderer, 1)
                            .slide(size.width, size.height, i -> slides.still(i, name()))));
  }

  /** Saves the load coming on and going off again as numbered pictures. */
  private void frames() {
    if (comparison == null) {
      return;
    }
    hold(true);
    Optional<Consumer<BufferedImage>> to = slides.frames(name());
    to.ifPresent(sink -> view.whenSettled(() -> frame(0, sink)));
  }

  private void frame(int number, Consumer<BufferedImage> sink) {
    if (number == FRAMES || comparison == null) {
      slides.ended();
      return;
    }
    double share = phase(2 * Math.PI * number / FRAMES);
    view.forSlides(renderer, share)
        .slide(
            SLIDE.width,
            SLIDE.height,
            image -> {
              sink.accept(image);
              frame(number + 1, sink);
            });
  }

  /** What a picture of this step is called: the finger's reference and the step. */
  private String name() {
    return reference + "-lesson-step-" + (step.number() + 1);
  }

  private Optional<Dimension> slideSize() {
    Object[] sizes = {"1920 × 1080", "3840 × 2160", "Cancel"};
    int answer =
        JOptionPane.showOptionDialog(
            this,
            "How large is the slide, in pixels?",
            "Save a still",
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.QUESTION_MESSAGE,
            null,
            sizes,
            sizes[0]);
    return switch (answer) {
      case 0 -> Optional.of(SLIDE);
      case 1 -> Optional.of(new Dimension(2 * SLIDE.width, 2 * SLIDE.height));
      default -> Optional.empty();
    };
  }

  /** Whose finger is shown; empty for none. */
  public String title() {
    return title;
  }

  /** Whether the pieces stand as they will stay. */
  public boolean isSettled() {
    return comparison != null && held && view.isSettled();
  }

  public void setPalette(Palette palette) {
    view.setPalette(palette);
  }

  /** Ends its thread. */
  public void close() {
    clock.stop();
    worker.close();
  }
}
