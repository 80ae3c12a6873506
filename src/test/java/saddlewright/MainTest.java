package saddlewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MainTest {

  @TempDir Path folder;

  @Test
  void an_existing_case_file_or_sheet_opens_in_the_window() throws Exception {
    Path caseFile = Files.writeString(folder.resolve("a.json"), "{}");
    Path sheet = Files.writeString(folder.resolve("a.PDF"), "");

    assertThat(Main.fileToOpen(caseFile.toString())).contains(caseFile);
    assertThat(Main.fileToOpen(sheet.toString())).contains(sheet);
  }

  @Test
  void all_else_goes_to_the_command_line() throws Exception {
    Path text = Files.writeString(folder.resolve("a.txt"), "");

    assertThat(Main.fileToOpen(text.toString())).isEmpty();
    assertThat(Main.fileToOpen(folder.resolve("missing.json").toString())).isEmpty();
    assertThat(Main.fileToOpen("--help")).isEmpty();
    assertThat(Main.fileToOpen("\0.json")).isEmpty();
  }
}
