package org.midlateral.viewer.window;

import java.awt.BorderLayout;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.KeyStroke;
import javax.swing.SwingWorker;
import javax.swing.WindowConstants;
import org.midlateral.document.Defect;
import org.midlateral.document.FileProblem;
import org.midlateral.document.WholeFile;
import org.midlateral.document.format.SolidFormat;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Order;
import org.midlateral.measurement.file.Orders;
import org.midlateral.recipe.product.FormerParts;
import org.midlateral.recipe.product.Product;
import org.midlateral.recipe.product.ProductRecipe;
import org.midlateral.recipe.product.ProductWriter;
import org.midlateral.recipe.product.ProductWriter.Writing;
import org.midlateral.recipe.record.MakingSource;
import org.midlateral.viewer.dialog.FileDialogs;
import org.midlateral.viewer.dialog.MessageDialogs;
import org.midlateral.viewer.draft.Draft;
import org.midlateral.viewer.draft.DraftText;

/** Writes all files of a design, as the command line does, with a bar and a button to cancel it. */
final class ExportJob extends SwingWorker<String, String> {
  private static final String WRITING = "Writing the files";

  private final JFrame window;
  private final Draft draft;
  private final String place;
  private final Path folder;
  private final boolean force;
  private final JDialog dialog;
  private final JLabel step = new JLabel("Beginning");
  private final JButton cancel = new JButton("Cancel");

  /** The thread that computes. */
  private Thread working;

  /** What is being made, once it has been read. */
  private volatile Order order;

  private boolean cancelled;
  private boolean writing;

  /** What is done when it has ended, in place of saying so; null to say so. */
  private Runnable afterwards;

  /**
   * An export.
   *
   * @param place name of the file that the design is from, for the record of making
   * @param force whether files that are there may be replaced
   */
  ExportJob(JFrame window, Draft draft, String place, Path folder, boolean force) {
    this.window = window;
    this.draft = draft;
    this.place = place;
    this.folder = folder;
    this.force = force;
    dialog = new JDialog(window, "Export of " + draft.get("reference"), false);
    dialog.setName("export");
    JProgressBar bar = new JProgressBar();
    bar.setIndeterminate(true);
    cancel.setName("export.cancel");
    cancel.addActionListener(e -> cancelExport());
    dialog.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    dialog.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            cancelExport();
          }
        });
    dialog
        .getRootPane()
        .registerKeyboardAction(
            e -> cancelExport(),
            KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    JPanel panel = new JPanel(new BorderLayout(12, 12));
    panel.setBorder(BorderFactory.createEmptyBorder(16, 20, 16, 20));
    panel.add(step, BorderLayout.NORTH);
    panel.add(bar, BorderLayout.CENTER);
    panel.add(cancel, BorderLayout.EAST);
    dialog.setContentPane(panel);
    dialog.setSize(420, 130);
    dialog.setLocationRelativeTo(window);
  }

  void start() {
    execute();
    dialog.setVisible(true);
  }

  /**
   * Nothing has been written yet, and now nothing will be: what is still computed ends by itself at
   * its next step. Once files are being written they are written to the end, which is soon.
   */
  private void cancelExport() {
    synchronized (this) {
      if (writing) {
        return;
      }
      cancelled = true;
      if (working != null) {
        working.interrupt();
      }
    }
    dialog.dispose();
    if (afterwards == null) {
      MessageDialogs.say(window, "Cancelled", "Nothing was written.");
    } else {
      afterwards.run();
    }
  }

  /** Whether it goes on. */
  boolean isRunning() {
    return !isDone() && dialog.isShowing();
  }

  /** Does something else when it has ended, and calls it off where that still can be. */
  void endWith(Runnable next, boolean callOff) {
    if (!isRunning()) {
      next.run();
      return;
    }
    afterwards = next;
    if (callOff) {
      cancelExport();
    }
  }

  private synchronized void begin() {
    working = Thread.currentThread();
  }

  /** From here on it cannot be cancelled. */
  private synchronized void write() {
    working = null;
    // Threads are used again, by others.
    Thread.interrupted();
    if (cancelled) {
      throw new CancellationException("the export was cancelled");
    }
    writing = true;
  }

  @Override
  protected String doInBackground() throws IOException {
    begin();
    Product product;
    try {
      publish("Making and inspecting the pieces");
      Orders.Result read = Orders.parse(DraftText.write(draft), "", List.of());
      order = read.order();
      product = ProductRecipe.make(order, read.cautions());
      if (product.isMade()) {
        publish("Computing the mechanics and drawing the documents");
        product = ProductRecipe.withDocuments(product);
      }
    } finally {
      write();
    }
    if (!product.isMade()) {
      return "Nothing was written. " + refusals(product.findings());
    }
    publish(WRITING);
    WholeFile.makeFolder(folder);
    MakingSource source = MakingSource.of(place, product.order(), List.of(), SolidFormat.USUAL);
    ProductWriter.write(
        product, folder, new Writing(SolidFormat.USUAL, force, false, Optional.of(source)));
    return told(product);
  }

  /** What is to be told beside that it was written; empty where all is well. */
  private String told(Product product) {
    StringBuilder text = new StringBuilder();
    // Parts of an earlier export: whoever prints them has pieces that do not belong together.
    Set<String> written = ProductWriter.files(product, SolidFormat.USUAL).keySet();
    for (Path former : FormerParts.in(folder, written)) {
      text.append(former).append(" is not of this export; delete it or set it aside. ");
    }
    if (!product.ok()) {
      text.insert(0, refusals(product.findings()) + " ");
    }
    return text.isEmpty() ? "" : "Written to " + folder + ". " + text.toString().strip();
  }

  private static String refusals(List<Finding> findings) {
    return String.join(
        " ",
        findings.stream()
            .filter(f -> f.severity() == Finding.Severity.REFUSAL)
            .map(Finding::text)
            .toList());
  }

  @Override
  protected void process(List<String> steps) {
    step.setText(steps.get(steps.size() - 1));
    cancel.setEnabled(!steps.contains(WRITING));
  }

  @Override
  protected void done() {
    dialog.dispose();
    try {
      String trouble = get();
      if (trouble.isEmpty() && afterwards != null) {
        afterwards.run();
      } else if (trouble.isEmpty()) {
        MessageDialogs.written(window, folder);
      } else {
        MessageDialogs.trouble(window, trouble);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      failed(e.getCause());
    }
  }

  private void failed(Throwable cause) {
    if (cause instanceof CancellationException) {
      // It was said when it was cancelled.
      return;
    }
    if (cause instanceof FileProblem problem && problem.kind() == FileProblem.Kind.EXISTS) {
      if (FileDialogs.replace(window, "Files of an earlier export are there. Replace them?")) {
        new ExportJob(window, draft, place, folder, true).start();
      }
    } else if (cause instanceof FileProblem || cause instanceof IOException) {
      MessageDialogs.trouble(window, String.valueOf(cause.getMessage()));
    } else {
      List<Order> orders = Optional.ofNullable(order).stream().toList();
      Defect defect = new Defect(cause, List.of("midlateral view", "export"), orders);
      String request = Defect.request(defect.write(Optional.of(folder)));
      MessageDialogs.trouble(
          window, "A defect of the program stopped the export (" + cause + "); " + request + ".");
    }
  }
}
