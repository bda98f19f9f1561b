package org.fettlebench.desktop.widgets;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.FileDialog;
import org.fettlebench.desktop.Desk;

/**
 * Where a page's files come from and go to: it asks, writes off the window's thread, says what was
 * written and begins in the same folder next time.
 */
public final class PageFiles {
  private static final List<String> PICTURES = List.of(".svg", ".png", ".pdf");
  private static final String FOLDER = "folder";

  private final Desk desk;
  private final String pageId;

  /** Makes the files of a page. */
  public PageFiles(Desk desk, String pageId) {
    this.desk = desk;
    this.pageId = pageId;
  }

  /** Asks for a file to be read; {@code patterns} such as {@code *.seat.toml;*.toml}. */
  public Optional<Path> askOpen(String title, String patterns) {
    return Optional.ofNullable(dialogue(SWT.OPEN, title, patterns).open()).map(Path::of);
  }

  /** Asks where to write; a name without the ending's last part gets the whole ending. */
  public Optional<Path> askSave(String title, String suggested, String ending) {
    FileDialog dialogue = dialogue(SWT.SAVE, title, "*" + ending);
    dialogue.setFileName(suggested + ending);
    String last = ending.substring(ending.lastIndexOf('.'));
    return Optional.ofNullable(dialogue.open())
        .map(file -> file.endsWith(last) ? file : file + ending)
        .map(Path::of);
  }

  /**
   * Asks where to write a picture: SVG, PNG or PDF by the name's ending, else by the kind chosen.
   *
   * @param pdf what the PDF is, for people
   */
  public Optional<Path> askPicture(String suggested, String pdf) {
    FileDialog dialogue = dialogue(SWT.SAVE, "Save the drawing", "*.svg,*.png,*.pdf");
    dialogue.setFilterNames(
        new String[] {"Drawing to scale (*.svg)", "Picture (*.png)", pdf + " (*.pdf)"});
    dialogue.setFileName(suggested + ".svg");
    Optional<String> chosen = Optional.ofNullable(dialogue.open());
    String kind = PICTURES.get(Math.max(0, dialogue.getFilterIndex()));
    return chosen.map(file -> pictureEnding(file).isPresent() ? file : file + kind).map(Path::of);
  }

  /** Returns which of the three kinds of picture a name asks for. */
  public static Optional<String> pictureEnding(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return PICTURES.stream().filter(lower::endsWith).findFirst();
  }

  /** Makes a file's name, without ending, out of what a person called a thing. */
  public static String name(String called, String otherwise) {
    String name = called.strip().replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    return name.isEmpty() ? otherwise : name;
  }

  /** Writes a file and says so. */
  public void write(Path file, byte[] bytes) {
    write(file, () -> bytes, "is written", () -> {});
  }

  /**
   * Makes a file's content and writes it, then does something more.
   *
   * @param what is said after the file's name, such as {@code is written}
   * @param then once it is written, on the window's thread
   */
  public void write(Path file, Callable<byte[]> bytes, String what, Runnable then) {
    desk.work(
        "Writing " + file.getFileName(),
        () -> Files.write(file, bytes.call()),
        written -> {
          Optional.ofNullable(written.toAbsolutePath().getParent())
              .ifPresent(folder -> desk.remember(pageId, FOLDER, folder.toString()));
          desk.say(written + " " + what + ".");
          then.run();
        });
  }

  /** Returns a picture as a PNG file. */
  public static byte[] png(ImageData picture) {
    ImageLoader loader = new ImageLoader();
    loader.data = new ImageData[] {picture};
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    loader.save(bytes, SWT.IMAGE_PNG);
    return bytes.toByteArray();
  }

  private FileDialog dialogue(int style, String title, String patterns) {
    FileDialog dialogue = new FileDialog(desk.shell(), style);
    dialogue.setText(title);
    dialogue.setFilterExtensions(patterns.split(","));
    dialogue.setFilterPath(desk.remembered(pageId, FOLDER, ""));
    dialogue.setOverwrite(true);
    return dialogue;
  }
}
