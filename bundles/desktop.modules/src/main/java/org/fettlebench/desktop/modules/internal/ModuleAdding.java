package org.fettlebench.desktop.modules.internal;

import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.MessageBox;
import org.fettlebench.desktop.Desk;
import org.fettlebench.modules.Modules;

/** Lets a module in: asks for its jar, says what it may do, copies it. */
final class ModuleAdding {
  private final Desk desk;
  private final Modules modules;

  ModuleAdding(Desk desk, Modules modules) {
    this.desk = desk;
    this.modules = modules;
  }

  /** Asks which jar, and goes on from there. */
  void ask() {
    FileDialog dialog = new FileDialog(desk.shell(), SWT.OPEN);
    dialog.setText("Add a module");
    dialog.setFilterExtensions(new String[] {"*.jar"});
    dialog.setFilterNames(new String[] {"Modules (*.jar)"});
    String chosen = dialog.open();
    if (chosen != null) {
      desk.work("Reading the module", () -> ModuleJar.read(Path.of(chosen)), jar -> warn(jar));
    }
  }

  private void warn(ModuleJar jar) {
    MessageBox box = new MessageBox(desk.shell(), SWT.ICON_WARNING | SWT.YES | SWT.NO);
    box.setText("What " + jar.title() + " may do");
    box.setMessage(jar.warning());
    if (box.open() == SWT.YES) {
      copy(jar);
    }
  }

  /** Copies a jar that a person has agreed to. */
  void copy(ModuleJar jar) {
    Path folder = modules.folder();
    desk.work(
        "Adding " + jar.title(),
        () -> jar.copyInto(folder),
        copied -> desk.say(jar.title() + " is in the modules folder and starts now."));
  }

  /** Shows the modules folder in the system's own file window, or says where it is. */
  void openFolder() {
    Path folder = modules.folder();
    desk.work(
        "Opening the modules folder",
        () -> java.nio.file.Files.createDirectories(folder),
        made -> {
          if (!Program.launch(made.toString())) {
            desk.say("The modules folder is " + made + ".");
          }
        });
  }
}
