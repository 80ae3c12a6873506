package saddlewright.classification;

import java.util.Optional;
import java.util.Set;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/**
 * The sixteen places of an arch as sets of bits: all that its Kennedy class depends on. Bit 0 is
 * the patient's right third molar and bit 15 the left one, as {@link Tooth#place()} counts.
 *
 * <p>Counted teeth cut the arch into stretches; a stretch with a place to be replaced is an
 * edentulous area. Whatever is neither counted nor an open gap (a closed space, an idle third
 * molar) is thereby cut out of the arch without further ado.
 *
 * @param standing places at which a crown stands once planned extractions are done
 * @param replaced lost places that get an artificial tooth; other places in it have no effect
 * @param closed lost places whose space has closed; other places in it have no effect
 * @param abutments standing third molars that serve as abutments; other places have no effect
 */
public record ArchPattern(int standing, int replaced, int closed, int abutments) {

  static final int PLACES = 16;
  static final int ALL = 0xFFFF;
  static final int RIGHT = 0x00FF;
  static final int LEFT = 0xFF00;
  static final int THIRD_MOLARS = 0x8001;

  public ArchPattern {
    if (((standing | replaced | closed | abutments) & ~ALL) != 0) {
      throw new IllegalArgumentException("an arch has sixteen places, bits 0 to 15");
    }
  }

  /** The pattern of a chart; teeth of the other arch among the abutments have no effect. */
  public static ArchPattern of(ArchChart chart, Set<Tooth> abutments) {
    int standing = 0;
    int replaced = 0;
    int closed = 0;
    int used = 0;
    for (Tooth tooth : Tooth.in(chart.arch())) {
      int bit = 1 << tooth.place();
      if (chart.stands(tooth)) {
        standing |= bit;
        if (tooth.position() == 8 && (chart.tooth(tooth).abutment() || abutments.contains(tooth))) {
          used |= bit;
        }
      } else if (chart.isReplaced(tooth)) {
        replaced |= bit;
      } else if (chart.isClosed(tooth)) {
        closed |= bit;
      }
    }
    return new ArchPattern(standing, replaced, closed, used);
  }

  /** The standing teeth that can bound an area: all but third molars that are no abutments. */
  public int counted() {
    return standing & (~THIRD_MOLARS | abutments);
  }

  /** The lost places at which there is still a space. */
  public int gaps() {
    return ALL & ~standing & ~closed;
  }

  /** The places that get an artificial tooth. */
  public int toReplace() {
    return gaps() & replaced;
  }

  /**
   * The Kennedy class by Applegate's rules.
   *
   * <p>An arch in which any tooth stands is not edentulous, even where only an idle third molar
   * does.
   */
  public KennedyVerdict verdict() {
    if (standing == 0) {
      return KennedyVerdict.EDENTULOUS;
    }
    int wanted = toReplace();
    if (wanted == 0) {
      return KennedyVerdict.NONE;
    }
    int counted = counted();
    int gaps = gaps();
    int areas = 0;
    boolean crossing = false;
    boolean freeRight = false;
    boolean freeLeft = false;
    for (int from = 0; from < PLACES; ) {
      int to = nextCounted(counted, from);
      int stretch = places(from, to);
      if ((wanted & stretch) != 0) {
        areas++;
        freeRight |= from == 0;
        freeLeft |= to == PLACES;
        crossing |= crossesMidline(gaps & stretch);
      }
      from = to + 1;
    }
    if (freeRight && freeLeft) {
      // A single area is free at both ends only where no tooth counts at all.
      return new KennedyVerdict(KennedyClass.I, Math.max(0, areas - 2));
    }
    if (freeRight || freeLeft) {
      return new KennedyVerdict(KennedyClass.II, areas - 1);
    }
    return areas == 1 && crossing
        ? new KennedyVerdict(KennedyClass.IV, 0)
        : new KennedyVerdict(KennedyClass.III, areas - 1);
  }

  /** The nearest counted tooth on the patient's right of a span, past closed spaces. */
  public Optional<Tooth> countedBefore(Span span) {
    int below = counted() & places(0, span.first().place());
    return below == 0
        ? Optional.empty()
        : Optional.of(Tooth.at(span.arch(), 31 - Integer.numberOfLeadingZeros(below)));
  }

  /** The nearest counted tooth on the patient's left of a span, past closed spaces. */
  public Optional<Tooth> countedAfter(Span span) {
    int above = counted() & places(span.last().place() + 1, PLACES);
    return above == 0
        ? Optional.empty()
        : Optional.of(Tooth.at(span.arch(), Integer.numberOfTrailingZeros(above)));
  }

  /** The first place, from this one on, at which a counted tooth stands; 16 where none does. */
  static int nextCounted(int counted, int from) {
    int above = counted >>> from;
    return above == 0 ? PLACES : from + Integer.numberOfTrailingZeros(above);
  }

  /** The places from one up to, and without, another. */
  static int places(int from, int to) {
    return (1 << to) - (1 << from);
  }

  static boolean crossesMidline(int places) {
    return (places & RIGHT) != 0 && (places & LEFT) != 0;
  }

  static Span span(Arch arch, int places) {
    return Span.of(
        Tooth.at(arch, Integer.numberOfTrailingZeros(places)),
        Tooth.at(arch, 31 - Integer.numberOfLeadingZeros(places)));
  }
}
