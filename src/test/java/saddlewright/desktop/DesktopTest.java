package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class DesktopTest {

  @Test
  void linux_has_a_display_only_where_the_environment_names_one() {
    assertThat(Desktop.hasDisplay("Linux", p -> null, Map.of())).isFalse();
    assertThat(Desktop.hasDisplay("Linux", p -> null, Map.of("DISPLAY", ""))).isFalse();
    assertThat(Desktop.hasDisplay("Linux", p -> null, Map.of("DISPLAY", ":0"))).isTrue();
    assertThat(Desktop.hasDisplay("Linux", p -> null, Map.of("WAYLAND_DISPLAY", "w-0"))).isTrue();
  }

  @Test
  void elsewhere_and_in_memory_a_display_is_taken_for_granted() {
    assertThat(Desktop.hasDisplay("Windows 11", p -> null, Map.of())).isTrue();
    assertThat(Desktop.hasDisplay("Mac OS X", p -> null, Map.of())).isTrue();
    assertThat(Desktop.hasDisplay("Linux", p -> "Monocle", Map.of())).isTrue();
  }
}
