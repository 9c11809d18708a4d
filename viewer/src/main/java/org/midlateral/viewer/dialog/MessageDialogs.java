package org.midlateral.viewer.dialog;

import java.awt.Component;
import java.awt.Desktop;
import java.awt.Dimension;
import java.awt.Font;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import org.midlateral.measurement.Caution;
import org.midlateral.viewer.scene.MadeDraft;

/** Texts that come up over the window. */
public final class MessageDialogs {
  /** All keys, as F1 tells them. */
  public static final String KEYS =
      """
      In the picture
      Drag: turn        Shift and drag, or the right button: move        Wheel: nearer, farther
      Click a piece: its section        Drag the hoop: the section along the finger
      Rest the pointer on a piece: the value there        Ctrl+M, two clicks: the distance; Escape clears it
      Ctrl and click: a rise there        Drag a rise: move it, either of the pair: both round the finger
      Wheel on a rise, or Page Up, Page Down: its height        Delete: take the rise out that was touched last
      Arrow keys: turn        Shift and arrow keys: move        + and -: nearer, farther
      1 to 6: dorsal, volar, radial, ulnar, proximal, distal        0: fit to the window

      In the form
      Tab and Shift+Tab: next and previous field        Up and Down: one step more or less
      Shift with Up or Down: ten steps        Lengths as 62, 6.2 cm, 63.5 mm or 2 1/2 in

      Anywhere
      Ctrl+N new finger        Ctrl+O open        Ctrl+Shift+O open a course        Ctrl+S save        Ctrl+E export all files
      Ctrl+P save the picture        Ctrl+Z undo        Ctrl+Y redo        Ctrl+D dark or light
      Ctrl+J how the joint is held        Ctrl+K compare        Ctrl+L lesson        Ctrl+Q quit
      Ctrl+Shift+S save as        Ctrl+Shift+Z redo        F1 this list        Alt+1 to Alt+6 the six sides
      Alt+0 fit to the window        F11 full screen, Escape back

      In the lesson
      Right or Page Down: next step        Left or Page Up: back        Ctrl+P: a still for a slide
      """;

  private MessageDialogs() {}

  /** Says what went wrong. */
  public static void trouble(Component parent, String sentence) {
    JOptionPane.showMessageDialog(
        parent, area(sentence, 420, 60), "That did not work", JOptionPane.WARNING_MESSAGE);
  }

  /**
   * Asks.
   *
   * @param answers the first is the usual one
   * @return number of the answer; -1 where the dialog was closed
   */
  public static int ask(Component parent, String title, String question, String... answers) {
    return JOptionPane.showOptionDialog(
        parent,
        question,
        title,
        JOptionPane.DEFAULT_OPTION,
        JOptionPane.QUESTION_MESSAGE,
        null,
        answers,
        answers[0]);
  }

  /** Says a sentence under a title. */
  public static void say(Component parent, String title, String sentence) {
    JOptionPane.showMessageDialog(
        parent, area(sentence, 420, 60), title, JOptionPane.INFORMATION_MESSAGE);
  }

  /** Tells where files were written, and opens the folder where that is wished. */
  public static void written(Component parent, Path folder) {
    JScrollPane text = area("All files were written to " + folder + ".", 420, 60);
    Object[] answers = {"OK", "Open folder"};
    int answer =
        JOptionPane.showOptionDialog(
            parent,
            text,
            "Exported",
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.INFORMATION_MESSAGE,
            null,
            answers,
            answers[0]);
    if (answer == 1 && !opened(folder)) {
      trouble(parent, "This system does not say how a folder is opened. It is " + folder + ".");
    }
  }

  private static boolean opened(Path folder) {
    try {
      if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.OPEN)) {
        Desktop.getDesktop().open(folder.toFile());
        return true;
      }
    } catch (IOException e) {
      return false;
    }
    return false;
  }

  /** Shows mouse and keys. */
  public static void keys(Component parent) {
    JOptionPane.showMessageDialog(
        parent, area(KEYS, 740, 420), "Keys and mouse", JOptionPane.PLAIN_MESSAGE);
  }

  /** All cautions, or those for the material of a design. */
  public static void cautions(Component parent, MadeDraft made) {
    List<Caution> cautions =
        made == null || made.shapes().isEmpty()
            ? Caution.all()
            : Caution.forMaterial(
                made.shapes().get().orthosis().order().design().material().name());
    String text = String.join("\n\n", cautions.stream().map(Caution::text).toList());
    JOptionPane.showMessageDialog(
        parent, area(text, 560, 330), "Cautions", JOptionPane.PLAIN_MESSAGE);
  }

  /** How the joint is held, with its table in letters of one width. */
  public static void held(Component parent, String reference, String text) {
    JTextArea area = new JTextArea(text);
    area.setName("held.text");
    area.setEditable(false);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setFont(new Font(Font.MONOSPACED, Font.PLAIN, area.getFont().getSize()));
    JScrollPane scroll = new JScrollPane(area);
    scroll.setPreferredSize(new Dimension(720, 440));
    JOptionPane.showMessageDialog(
        parent, scroll, "How the joint is held: " + reference, JOptionPane.PLAIN_MESSAGE);
  }

  private static JScrollPane area(String text, int width, int height) {
    JTextArea area = new JTextArea(text);
    area.setEditable(false);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setOpaque(false);
    JScrollPane scroll = new JScrollPane(area);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setPreferredSize(new Dimension(width, height));
    return scroll;
  }
}
