package saddlewright.desktop.views;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** What each platform's own command says of dark windows is understood; silence means light. */
class SystemLookTest {
  private static Function<List<String>, Optional<String>> saying(String command, String words) {
    return c -> c.get(0).equals(command) ? Optional.of(words) : Optional.empty();
  }

  @Test
  void each_platform_is_asked_its_own_way() {
    assertThat(SystemLook.isDark("Linux", Map.of(), saying("gsettings", "'prefer-dark'\n")))
        .isTrue();
    assertThat(SystemLook.isDark("Linux", Map.of(), saying("gsettings", "'default'\n"))).isFalse();
    assertThat(SystemLook.isDark("Mac OS X", Map.of(), saying("defaults", "Dark\n"))).isTrue();
    assertThat(
            SystemLook.isDark(
                "Windows 11",
                Map.of(),
                saying("reg", "    AppsUseLightTheme    REG_DWORD    0x0\r\n\r\n")))
        .isTrue();
    assertThat(
            SystemLook.isDark(
                "Windows 11", Map.of(), saying("reg", "    AppsUseLightTheme    REG_DWORD    0x1")))
        .isFalse();
  }

  @Test
  void a_theme_that_is_set_for_the_program_counts_and_no_answer_is_light() {
    assertThat(
            SystemLook.isDark("Linux", Map.of("GTK_THEME", "Adwaita:dark"), c -> Optional.empty()))
        .isTrue();
    assertThat(SystemLook.isDark("Linux", Map.of(), c -> Optional.empty())).isFalse();
    assertThat(SystemLook.isDark("Mac OS X", Map.of(), c -> Optional.empty())).isFalse();
  }
}
