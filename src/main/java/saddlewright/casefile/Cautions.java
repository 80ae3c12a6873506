package saddlewright.casefile;

import java.util.List;

/** The words of caution that every output of the program carries. */
public final class Cautions {
  /** One line, for the foot of a page or the end of a report. */
  public static final String LINE =
      "Drafting and teaching aid. The design is the responsibility of the licensed prescriber;"
          + " local regulations and clinical judgement come first.";

  /** The whole caution, a sentence or two each. */
  public static final List<String> FULL =
      List.of(
          "This is a drafting and teaching aid. It does not diagnose and does not treat.",
          "The design is the responsibility of the licensed prescriber who signs it.",
          "Findings are general teaching rules and not advice on a patient; that there are none"
              + " does not make a design safe.",
          "Local regulations and the clinician's own judgement come first.",
          "Figures from a mechanical model are estimates under stated assumptions.",
          "A removable denture confined to one side can be swallowed or inhaled and is never"
              + " passed.");

  private Cautions() {}
}
