package saddlewright.prescription;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;

/**
 * What tells one preparation from all others: where it is and what asks for it, never its words,
 * its sizes or its place in the list. What has been noted of it is found again by this after the
 * design has changed.
 *
 * @param teeth teeth by which it is told; none for what belongs to a side or to the whole arch
 * @param place where on the tooth, or on which side, as a word in kebab case; may be empty
 */
public record PreparationKey(
    Arch arch, PreparationKind kind, List<Tooth> teeth, String place, Demand demand) {
  private static final String NOTHING = "-";
  static final String BETWEEN = "between";
  static final String RIDGE = "ridge";

  public PreparationKey {
    teeth = List.copyOf(teeth);
  }

  static String place(Enum<?> where) {
    return code(where);
  }

  private static String code(Enum<?> e) {
    return e.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Such as {@code lower/rest-seat/35/mesial-occlusal/rest}; {@link #parse} reads it. */
  public String text() {
    String on =
        teeth.isEmpty()
            ? NOTHING
            : teeth.stream().map(Tooth::toString).collect(Collectors.joining("+"));
    return String.join(
        "/", arch.code(), code(kind), on, place.isEmpty() ? NOTHING : place, demand.code());
  }

  /** The key that a text spells; empty when it is none that this version knows. */
  public static Optional<PreparationKey> parse(String text) {
    String[] parts = text.split("/", -1);
    if (parts.length != 5) {
      return Optional.empty();
    }
    Optional<Arch> arch = Stream.of(Arch.values()).filter(a -> a.code().equals(parts[0])).findAny();
    Optional<PreparationKind> kind =
        Stream.of(PreparationKind.values()).filter(k -> code(k).equals(parts[1])).findAny();
    Optional<Demand> demand = Demand.find(parts[4]);
    if (arch.isEmpty() || kind.isEmpty() || demand.isEmpty()) {
      return Optional.empty();
    }
    List<Tooth> teeth = new ArrayList<>();
    if (!parts[2].equals(NOTHING)) {
      for (String number : parts[2].split("\\+", -1)) {
        Optional<Tooth> tooth =
            number.matches("[1-4][1-8]") ? Tooth.find(Integer.parseInt(number)) : Optional.empty();
        if (tooth.filter(t -> t.arch() == arch.get()).isEmpty()) {
          return Optional.empty();
        }
        teeth.add(tooth.get());
      }
    }
    String place = parts[3].equals(NOTHING) ? "" : parts[3];
    return Optional.of(new PreparationKey(arch.get(), kind.get(), teeth, place, demand.get()));
  }

  /** Where on the tooth, in the trade's words; empty when it is the whole of it. */
  public String surface() {
    if (place.equals(BETWEEN)) {
      return "embrasure";
    }
    for (Side side : Side.values()) {
      if (place.equals(code(side))) {
        return side == Side.RIGHT ? "right" : "left";
      }
    }
    if (teeth.isEmpty()) {
      return place.replace('-', ' ');
    }
    Tooth tooth = teeth.get(0);
    for (RestSite site : RestSite.values()) {
      if (place.equals(code(site))) {
        return ToothNames.site(site);
      }
    }
    for (Zone zone : Zone.values()) {
      if (place.equals(code(zone))) {
        return ToothNames.zone(tooth, zone);
      }
    }
    for (Face face : Face.values()) {
      if (place.equals(code(face))) {
        return ToothNames.face(tooth, face);
      }
    }
    for (End end : End.values()) {
      if (place.equals(code(end))) {
        return ToothNames.end(end);
      }
    }
    return place.replace('-', ' ');
  }
}
