package saddlewright.dentition;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A permanent tooth, named by its two-digit ISO 3950 (FDI) number. */
public enum Tooth {
  T11,
  T12,
  T13,
  T14,
  T15,
  T16,
  T17,
  T18,
  T21,
  T22,
  T23,
  T24,
  T25,
  T26,
  T27,
  T28,
  T31,
  T32,
  T33,
  T34,
  T35,
  T36,
  T37,
  T38,
  T41,
  T42,
  T43,
  T44,
  T45,
  T46,
  T47,
  T48;

  private static final Tooth[] BY_FDI = new Tooth[49];
  private static final Map<Arch, List<Tooth>> IN_ARCH = new EnumMap<>(Arch.class);

  static {
    for (Tooth t : values()) {
      BY_FDI[t.fdi] = t;
    }
    for (Arch arch : Arch.values()) {
      List<Tooth> row = new ArrayList<>();
      int right = arch == Arch.UPPER ? 10 : 40;
      int left = arch == Arch.UPPER ? 20 : 30;
      for (int n = 8; n >= 1; n--) {
        row.add(BY_FDI[right + n]);
      }
      for (int n = 1; n <= 8; n++) {
        row.add(BY_FDI[left + n]);
      }
      IN_ARCH.put(arch, List.copyOf(row));
    }
  }

  private final int fdi = Integer.parseInt(name().substring(1));

  /** The tooth with this FDI number; numbers that name no permanent tooth are refused. */
  public static Tooth of(int fdi) {
    return find(fdi)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    fdi + " is not an FDI tooth number; use 11–18, 21–28, 31–38 or 41–48"));
  }

  public static Optional<Tooth> find(int fdi) {
    return fdi < 0 || fdi >= BY_FDI.length ? Optional.empty() : Optional.ofNullable(BY_FDI[fdi]);
  }

  /** The sixteen teeth of an arch, from the patient's right third molar to the left one. */
  public static List<Tooth> in(Arch arch) {
    return IN_ARCH.get(arch);
  }

  /** The tooth at a place (0 to 15) of {@link #in(Arch)}. */
  public static Tooth at(Arch arch, int place) {
    return in(arch).get(place);
  }

  public int fdi() {
    return fdi;
  }

  public Arch arch() {
    return fdi < 30 ? Arch.UPPER : Arch.LOWER;
  }

  public Side side() {
    int quadrant = fdi / 10;
    return quadrant == 1 || quadrant == 4 ? Side.RIGHT : Side.LEFT;
  }

  /** Number from the midline, 1 (central incisor) to 8 (third molar). */
  public int position() {
    return fdi % 10;
  }

  /** Place along the arch, 0 (patient's right third molar) to 15 (left third molar). */
  public int place() {
    return side() == Side.RIGHT ? 8 - position() : 7 + position();
  }

  public boolean isIncisor() {
    return position() <= 2;
  }

  public boolean isCanine() {
    return position() == 3;
  }

  /** Incisors and canines. */
  public boolean isAnterior() {
    return position() <= 3;
  }

  public boolean isPremolar() {
    return position() == 4 || position() == 5;
  }

  public boolean isMolar() {
    return position() >= 6;
  }

  /** The same tooth on the other side of the arch. */
  public Tooth mirrored() {
    int quadrant = fdi / 10;
    int other = quadrant % 2 == 1 ? quadrant + 1 : quadrant - 1;
    return of(other * 10 + position());
  }

  /** The next position towards the given end; none behind a third molar. */
  public Optional<Tooth> neighbour(End end) {
    boolean rightwards = (end == End.DISTAL) == (side() == Side.RIGHT);
    int place = place() + (rightwards ? -1 : 1);
    return place < 0 || place > 15 ? Optional.empty() : Optional.of(at(arch(), place));
  }

  /** The end of this tooth that faces the other tooth of the same arch. */
  public End endTowards(Tooth other) {
    if (other.arch() != arch() || other == this) {
      throw new IllegalArgumentException(other + " has no direction from " + this);
    }
    boolean rightwards = other.place() < place();
    return rightwards == (side() == Side.RIGHT) ? End.DISTAL : End.MESIAL;
  }

  /** Key of the tooth sort in the data tables, such as U6 or L1. */
  public String key() {
    return (arch() == Arch.UPPER ? "U" : "L") + position();
  }

  /** The FDI number as text. */
  @Override
  public String toString() {
    return Integer.toString(fdi);
  }
}
