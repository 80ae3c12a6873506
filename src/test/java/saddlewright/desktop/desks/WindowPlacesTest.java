package saddlewright.desktop.desks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.Properties;
import javafx.geometry.Rectangle2D;
import org.junit.jupiter.api.Test;

/** Where windows stand, on screens of known size. */
class WindowPlacesTest {
  private static final Rectangle2D USUAL = new Rectangle2D(0, 0, 1440, 900);
  private static final List<Rectangle2D> ONE = List.of(new Rectangle2D(0, 0, 1920, 1080));

  private static Properties kept(String text) throws Exception {
    Properties p = new Properties();
    p.load(new StringReader(text));
    return p;
  }

  @Test
  void the_first_window_stands_in_the_middle_and_a_later_one_where_it_was_left() throws Exception {
    WindowPlaces first = WindowPlaces.kept(new Properties(), USUAL, ONE);
    assertThat(first.area()).isEqualTo(new Rectangle2D(240, 60, 1440, 900));

    WindowPlaces left = new WindowPlaces(new Rectangle2D(33, 44, 1000, 700), false);
    assertThat(WindowPlaces.kept(kept(left.text(new Properties())), USUAL, ONE)).isEqualTo(left);
  }

  @Test
  void a_window_that_filled_the_screen_goes_back_to_the_area_it_had_before() throws Exception {
    WindowPlaces before = new WindowPlaces(new Rectangle2D(33, 44, 1000, 700), false);
    WindowPlaces full = new WindowPlaces(new Rectangle2D(0, 0, 1920, 1080), true);
    String text = full.text(kept(before.text(new Properties())));
    assertThat(WindowPlaces.kept(kept(text), USUAL, ONE))
        .isEqualTo(new WindowPlaces(before.area(), true));
  }

  @Test
  void a_place_on_a_screen_that_is_gone_is_not_taken_up() throws Exception {
    Properties p = kept("x=2500\ny=100\nwidth=1000\nheight=700\n");
    List<Rectangle2D> two = List.of(ONE.get(0), new Rectangle2D(1920, 0, 1920, 1080));
    assertThat(WindowPlaces.kept(p, USUAL, two).area().getMinX()).isEqualTo(2500);
    Rectangle2D area = WindowPlaces.kept(p, USUAL, ONE).area();
    assertThat(ONE.get(0).contains(area)).as(area.toString()).isTrue();
  }

  @Test
  void what_was_not_written_by_us_does_no_harm() throws Exception {
    Properties p = kept("x=left\ny=NaN\nwidth=-4\nheight=1e9\nmaximised=perhaps\n");
    assertThat(WindowPlaces.kept(p, USUAL, ONE))
        .isEqualTo(WindowPlaces.kept(new Properties(), USUAL, ONE));
  }

  @Test
  void further_windows_step_down_and_begin_again_at_the_corner_of_their_screen() {
    WindowPlaces w = new WindowPlaces(new Rectangle2D(100, 100, 1700, 900), false);
    w = WindowPlaces.after(w, ONE);
    assertThat(w.area()).isEqualTo(new Rectangle2D(132, 132, 1700, 900));
    for (int i = 0; i < 40; i++) {
      WindowPlaces next = WindowPlaces.after(w, ONE);
      assertThat(next.area()).as("no two on one another").isNotEqualTo(w.area());
      assertThat(ONE.get(0).contains(next.area().getMinX(), next.area().getMinY())).isTrue();
      w = next;
    }
    WindowPlaces large = new WindowPlaces(new Rectangle2D(0, 0, 1920, 1080), true);
    assertThat(WindowPlaces.after(large, ONE))
        .isEqualTo(new WindowPlaces(new Rectangle2D(32, 32, 1920, 1080), false));
  }
}
