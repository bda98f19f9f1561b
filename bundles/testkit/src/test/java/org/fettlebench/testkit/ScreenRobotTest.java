package org.fettlebench.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.io.TempDir;

/** Needs a screen, such as Xvfb. */
@EnabledIfEnvironmentVariable(named = "DISPLAY", matches = ".+")
class ScreenRobotTest {
  @TempDir Path pictures;
  private static Display display;
  private Shell shell;
  private ScreenRobot robot;

  @BeforeAll
  static void takeTheScreen() {
    display = new Display();
  }

  @AfterAll
  static void leaveTheScreen() {
    display.dispose();
  }

  @BeforeEach
  void openAWindow() {
    shell = new Shell(display);
    shell.setLayout(new RowLayout(SWT.VERTICAL));
    robot = new ScreenRobot(display);
  }

  @AfterEach
  void closeTheWindow() {
    shell.dispose();
  }

  private void show() {
    shell.setSize(300, 200);
    shell.open();
    robot.pumpUntil("the window", shell::isVisible);
    robot.pump(Duration.ofMillis(200));
  }

  @Test
  void clicksAndTypes() {
    Text text = new Text(shell, SWT.BORDER);
    Button button = new Button(shell, SWT.PUSH);
    button.setText("Count");
    AtomicInteger clicks = new AtomicInteger();
    button.addListener(SWT.Selection, event -> clicks.incrementAndGet());
    show();
    robot.click(text);
    robot.type("5/32 in, 2 BA");
    robot.pumpUntil("the text", () -> text.getText().equals("5/32 in, 2 BA"));
    robot.press(SWT.BS);
    robot.pumpUntil("one sign less", () -> text.getText().equals("5/32 in, 2 B"));
    robot.press('a', SWT.MOD1);
    robot.pumpUntil("all selected", () -> text.getSelectionText().equals("5/32 in, 2 B"));
    robot.press(SWT.DEL);
    robot.type("0.375\" (#10_a:b) +x*y?");
    robot.pumpUntil(
        "signs that need shift", () -> text.getText().equals("0.375\" (#10_a:b) +x*y?"));
    robot.click(button);
    robot.pumpUntil("one click", () -> clicks.get() == 1);
  }

  @Test
  void keepsPictures() {
    Canvas canvas = new Canvas(shell, SWT.NONE);
    canvas.setBackground(display.getSystemColor(SWT.COLOR_RED));
    show();
    Path png = robot.snapshot(canvas, pictures.resolve("deep/red.png"));
    ImageData picture = new ImageData(png.toString());
    assertEquals(canvas.getSize().x, picture.width);
    assertEquals(
        new RGB(255, 0, 0), picture.palette.getRGB(picture.getPixel(picture.width / 2, 5)));
  }

  @Test
  void failsWhenWhatIsAwaitedDoesNotCome() {
    ScreenRobot hasty = new ScreenRobot(display, Duration.ofMillis(50));
    var failed = assertThrows(AssertionError.class, () -> hasty.pumpUntil("the moon", () -> false));
    assertEquals("not seen within 50 ms: the moon", failed.getMessage());
  }
}
