package saddlewright.desktop.preferences;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class FolderWindowTest {

  /** The commands are those of the platforms' manuals, from memory. */
  @Test
  void each_platform_shows_a_folder_in_its_own_way() {
    assertThat(FolderWindow.command("Mac OS X", Path.of("x"))).containsExactly("open", "x");
    assertThat(FolderWindow.command("Windows 11", Path.of("x"))).containsExactly("explorer", "x");
    assertThat(FolderWindow.command("Linux", Path.of("x"))).containsExactly("xdg-open", "x");
  }
}
