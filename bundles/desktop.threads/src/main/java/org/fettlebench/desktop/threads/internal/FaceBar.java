package org.fettlebench.desktop.threads.internal;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;

/** Names of the page's faces, of which one is pressed and shown below; remembered. */
final class FaceBar {
  private static final int PAD = 18;

  private final Desk desk;
  private final Composite bar;
  private final Composite below;
  private final StackLayout stack = new StackLayout();
  private final List<Face> faces = new ArrayList<>();
  private Runnable changed = () -> {};

  private record Face(String key, Button button, Control control) {}

  /**
   * Makes the bar.
   *
   * @param bar that takes the buttons
   * @param below that takes the faces
   */
  FaceBar(Composite bar, Composite below, Desk desk) {
    this.desk = desk;
    this.bar = Layouts.flow(bar);
    ((RowLayout) this.bar.getLayout()).spacing = 2;
    this.below = below;
    below.setLayout(stack);
  }

  /** Adds a face; an ampersand in its name marks the letter for Alt. */
  void add(String key, String name, String hint, Control control) {
    Button button = new Button(bar, SWT.TOGGLE);
    button.setText(name);
    button.setToolTipText(hint);
    button.setFont(desk.look().text());
    button.setForeground(desk.look().ink());
    button.addListener(SWT.Selection, event -> show(key));
    button.setLayoutData(
        new RowData(button.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + PAD, SWT.DEFAULT));
    faces.add(new Face(key, button, control));
  }

  /** Is told when another face is shown. */
  void onChange(Runnable listener) {
    changed = listener;
  }

  /** Shows the face that was shown last, else the first. */
  void again() {
    String key = desk.remembered(ThreadsPage.ID, "face", faces.get(0).key());
    show(faces.stream().anyMatch(face -> face.key().equals(key)) ? key : faces.get(0).key());
  }

  /** Shows a face. */
  void show(String key) {
    for (Face face : faces) {
      boolean wanted = face.key().equals(key);
      face.button().setSelection(wanted);
      if (wanted) {
        stack.topControl = face.control();
      }
    }
    below.layout();
    desk.remember(ThreadsPage.ID, "face", key);
    changed.run();
  }

  /** Returns the key of the face that is shown. */
  String shown() {
    return faces.stream()
        .filter(face -> face.control() == stack.topControl)
        .map(Face::key)
        .findFirst()
        .orElse("");
  }
}
