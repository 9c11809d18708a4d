package org.midlateral.viewer.weeks;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingWorker;
import org.midlateral.document.FileProblem;
import org.midlateral.document.drawing.PageFrame;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.file.Courses;
import org.midlateral.recipe.course.CourseFile;
import org.midlateral.recipe.course.FollowUp;
import org.midlateral.recipe.course.FollowUpWords;

/** A course with its verdict, its charts, and a form to add a visit by. */
public final class WeeksPanel extends JPanel {
  private static final long serialVersionUID = 1;
  private static final int EDGE = 10;

  private final transient CourseFile file;
  private final ChartView charts = new ChartView();
  private final JLabel verdict = new JLabel();
  private final JTextArea reasons = new JTextArea(6, 40);
  private final JTextArea trouble = new JTextArea(3, 20);
  private final JButton add = new JButton("Add this visit");
  private final VisitForm form;

  /** What an added visit comes to: the course told anew, or why the file is as it was. */
  private record Added(FollowUp told, String wrong) {}

  /**
   * A panel.
   *
   * @param file of the course
   * @param told what it says now
   */
  public WeeksPanel(CourseFile file, FollowUp told) {
    super(new BorderLayout(EDGE, EDGE));
    this.file = file;
    form = new VisitForm(told.course());
    setBorder(BorderFactory.createEmptyBorder(EDGE, EDGE, EDGE, EDGE));
    verdict.setName("weeks.verdict");
    verdict.setToolTipText("What the rules of the course come to at the last visit");
    add.setToolTipText("Write the visit into the course's file");
    verdict.setFont(verdict.getFont().deriveFont(Font.BOLD, 1.3f * verdict.getFont().getSize()));
    quiet(reasons, "weeks.reasons");
    quiet(trouble, "weeks.trouble");
    add.setName("weeks.add");
    add.addActionListener(e -> add());
    JPanel head = new JPanel(new BorderLayout());
    head.add(verdict, BorderLayout.NORTH);
    head.add(new JScrollPane(reasons), BorderLayout.CENTER);
    JPanel visit = new JPanel(new BorderLayout(EDGE, EDGE));
    visit.add(form, BorderLayout.NORTH);
    JPanel below = new JPanel(new BorderLayout());
    below.add(add, BorderLayout.NORTH);
    below.add(trouble, BorderLayout.CENTER);
    visit.add(below, BorderLayout.CENTER);
    add(head, BorderLayout.NORTH);
    add(charts, BorderLayout.CENTER);
    JScrollPane scroll =
        new JScrollPane(
            visit,
            ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS,
            ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    add(scroll, BorderLayout.EAST);
    add(new JLabel(PageFrame.WARNING), BorderLayout.SOUTH);
    show(told);
  }

  private static void quiet(JTextArea area, String name) {
    area.setName(name);
    area.setEditable(false);
    area.setOpaque(false);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
  }

  private void show(FollowUp told) {
    FollowUpWords words = new FollowUpWords(told);
    verdict.setText(words.verdict());
    String why =
        told.reasons().stream()
            .map(FollowUp.CourseReason::sentence)
            .collect(Collectors.joining("\n"));
    String now = String.join("\n", words.now());
    reasons.setText(why + "\n\n" + now);
    reasons.setCaretPosition(0);
    charts.show(told);
  }

  /** Saves the visit and tells the course anew, off the window's thread. */
  private void add() {
    List<String> readings = form.readings();
    add.setEnabled(false);
    new SwingWorker<Added, Void>() {
      @Override
      protected Added doInBackground() {
        return added(readings);
      }

      @Override
      protected void done() {
        finish(this);
      }
    }.execute();
  }

  private void finish(SwingWorker<Added, Void> work) {
    add.setEnabled(true);
    try {
      Added added = work.get();
      trouble.setText(added.wrong());
      if (added.told() != null) {
        form.clear();
        show(added.told());
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      throw new IllegalStateException("a visit was not added", e.getCause());
    }
  }

  private Added added(List<String> readings) {
    try {
      Courses.CourseRead read = file.add(readings);
      return read.ok()
          ? new Added(FollowUp.of(read.course()), "")
          : new Added(null, words(read.errors()));
    } catch (FileProblem problem) {
      return new Added(null, problem.getMessage());
    }
  }

  /** What is wrong, without the file's name and line, which are of no use here. */
  public static String words(List<InputError> errors) {
    return errors.stream()
        .map(error -> error.key().replaceFirst("^visits\\[\\d+]\\.", "") + ": " + error.text())
        .collect(Collectors.joining("\n"));
  }
}
