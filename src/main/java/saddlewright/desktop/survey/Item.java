package saddlewright.desktop.survey;

import java.util.Optional;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/** One thing that is charted of a tooth or beside it. */
public interface Item {
  /** Stable name, also of the field in which it is written. */
  String id();

  /** What it is, for all teeth of an arch. */
  String title(Arch arch);

  /** What it is, of one tooth, in the middle of a sentence. */
  String name(Tooth tooth);

  /** The unit behind the value; empty where there is none. */
  String unit();

  /** How it is written, in a sentence. */
  String rule();

  /** What was published of it; empty where nothing was. */
  Optional<String> published(Tooth tooth);

  /** Whether there is such a thing at this tooth as it is charted. */
  boolean isAskedOf(ArchChart chart, Tooth tooth);

  /** Why it is not asked of this tooth. */
  String notAsked(ArchChart chart, Tooth tooth);

  /** The value as it is written; empty when it is not charted. */
  String text(ArchChart chart, Tooth tooth);

  /** What is odd about the value that is charted. */
  Optional<String> caution(ArchChart chart, Tooth tooth);

  /** The chart with what the text says; a blank one takes the value away. */
  Entry enter(ArchChart chart, Tooth tooth, String text);
}
