package saddlewright.casefile;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import saddlewright.casefile.order.Answer;
import saddlewright.casefile.order.Coursework;
import saddlewright.casefile.order.Disinfection;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.Enclosure;
import saddlewright.casefile.order.IssuedRevision;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.OwnPreparation;
import saddlewright.casefile.order.PlannedStage;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.casefile.order.Preparations;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.Regime;
import saddlewright.casefile.order.Signature;
import saddlewright.casefile.order.StagePlan;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.rules.LimitRange;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.Severity;
import saddlewright.rules.Source;
import saddlewright.rules.Threshold;
import saddlewright.rules.Waiver;
import saddlewright.rules.Weighting;

/**
 * Arbitrary cases for property tests: every member filled or empty, every kind of component, wise
 * or not, and members that no version knows.
 */
public final class ArbitraryCases {
  private ArbitraryCases() {}

  /** Whole cases, with unknown components and unknown members in any place. */
  public static Arbitrary<Case> cases() {
    return plainCases(true).flatMap(c -> extrasOf(c).map(c::withExtras));
  }

  /** Whole cases that hold nothing unknown. */
  public static Arbitrary<Case> knownCases() {
    return plainCases(false);
  }

  private static Arbitrary<Case> plainCases(boolean unknown) {
    Arbitrary<List<Waiver>> waivers = waivers().list().ofMaxSize(3);
    Arbitrary<Case> identity =
        Combinators.combine(text(), text(), text(), profiles(unknown))
            .as(
                (ref, title, story, p) ->
                    Case.blank(ref).withIdentity(ref, title, story).withProfile(p));
    return Combinators.combine(
            identity,
            ArbitraryCharts.charts(Arch.UPPER),
            ArbitraryCharts.charts(Arch.LOWER),
            designs(Arch.UPPER, unknown),
            designs(Arch.LOWER, unknown),
            waivers,
            prescriptions())
        .as(
            (c, uc, lc, ud, ld, w, p) ->
                c.with(uc).with(lc).with(ud).with(ld).withWaivers(w).with(p));
  }

  /** The designs of an arch, of up to eight components with ids of their own. */
  public static Arbitrary<ArchDesign> designs(Arch arch, boolean unknown) {
    return ArbitraryComponents.of(arch, unknown)
        .list()
        .ofMaxSize(8)
        .map(
            makers -> {
              ArchDesign design = ArchDesign.empty(arch);
              for (ArbitraryComponents.Maker m : makers) {
                design = design.plus(m.make(design.freshId("part")));
              }
              return design;
            });
  }

  /** Profiles that come with the program, that a school wrote, or that nobody here knows. */
  public static Arbitrary<Profile> profiles(boolean unknown) {
    Arbitrary<Profile> builtIn = Arbitraries.of(Profile.BUILT_IN);
    Arbitrary<Profile> other =
        Combinators.combine(text().map(t -> "p" + t), Arbitraries.of("1", "2", ""))
            .as(Profile::named);
    return Arbitraries.oneOf(builtIn, ownProfiles(), unknown ? other : olderProfiles());
  }

  private static Arbitrary<Profile> olderProfiles() {
    return Arbitraries.of("0", "2").map(v -> Profile.named("hygiene-first", v));
  }

  private static Arbitrary<Profile> ownProfiles() {
    Arbitrary<Source> sources =
        Combinators.combine(text(), Arbitraries.of(Source.Evidence.values())).as(Source::new);
    Arbitrary<Map<Quantity, Threshold>> limits =
        Arbitraries.maps(
                Arbitraries.of(Quantity.values()),
                Combinators.combine(Arbitraries.doubles().between(0, 1), sources, text())
                    .as(Threshold::new))
            .ofMaxSize(4)
            .map(ArbitraryCases::withinRange);
    Arbitrary<Map<String, Weighting>> weights =
        Arbitraries.maps(
                Arbitraries.of("cast-arms-are-long-enough", "a/rule~of a-later version"),
                Combinators.combine(Arbitraries.of(Severity.values()).optional(), sources, text())
                    .as(Weighting::new))
            .ofMaxSize(2);
    return Combinators.combine(
            text().map(t -> "School " + t),
            text(),
            Arbitraries.of("uk-teaching", "hygiene-first", "of-a-later-version"),
            Arbitraries.of(Profile.Axis.values()),
            limits,
            weights)
        .as(Profile::own);
  }

  /** The limits with each value, from 0 to 1, taken as a share of the plausible range. */
  private static Map<Quantity, Threshold> withinRange(Map<Quantity, Threshold> shares) {
    Map<Quantity, Threshold> out = new EnumMap<>(Quantity.class);
    shares.forEach(
        (q, t) -> {
          LimitRange r = LimitRange.of(q);
          double value = r.least() + t.value() * (r.most() - r.least());
          out.put(q, new Threshold(value, t.source(), t.reason()));
        });
    return out;
  }

  private static Arbitrary<Waiver> waivers() {
    Arbitrary<LocalDate> dates =
        Arbitraries.integers().between(0, 40_000).map(LocalDate.of(2000, 1, 1)::plusDays);
    return Combinators.combine(
            Arbitraries.of("clasp-without-rest@lower/component/clasp-1", "one/two~three@x", "a@b"),
            text().map(t -> "because " + t),
            text(),
            dates,
            text())
        .as(Waiver::new);
  }

  private static Arbitrary<PrescriptionDetails> prescriptions() {
    return Combinators.combine(
            Arbitraries.of(DocumentKind.class),
            Arbitraries.of(Regime.class),
            Arbitraries.maps(Arbitraries.of(Item.class), answers()).ofMaxSize(8),
            enclosures().list().ofMaxSize(3),
            disinfections().list().ofMaxSize(3),
            preparations(),
            stagePlans(),
            Combinators.combine(signatures().optional(), coursework(), issued()).as(Remaining::new))
        .as(
            (kind, regime, answers, enclosures, disinfections, preparations, stages, rest) ->
                new PrescriptionDetails(
                    kind,
                    regime,
                    answers,
                    enclosures,
                    disinfections,
                    preparations,
                    stages,
                    rest.signature(),
                    rest.coursework(),
                    rest.issued()));
  }

  private record Remaining(
      Optional<Signature> signature, Coursework coursework, List<IssuedRevision> issued) {}

  private static Arbitrary<LocalDate> days() {
    return Arbitraries.integers().between(0, 40_000).map(LocalDate.of(2000, 1, 1)::plusDays);
  }

  private static Arbitrary<Answer> answers() {
    return Arbitraries.oneOf(
        text().map(Answer::of),
        Arbitraries.of(Answer.NONE, Answer.NOT_APPLICABLE),
        days().optional().map(Answer::toFollow));
  }

  private static Arbitrary<Enclosure> enclosures() {
    return Combinators.combine(
            Arbitraries.of(Enclosure.Kind.class), Arbitraries.integers().between(1, 999), text())
        .as(Enclosure::new);
  }

  private static Arbitrary<Disinfection> disinfections() {
    return Combinators.combine(
            text().map(t -> "impression" + t),
            text(),
            Arbitraries.integers().between(0, 10_000).optional(),
            text(),
            days().optional())
        .as(Disinfection::new);
  }

  private static Arbitrary<Preparations> preparations() {
    Arbitrary<PreparationMark> marks =
        Combinators.combine(
                Arbitraries.of("lower/rest-seat/36/mesial", "own/p-1", "x y"),
                Arbitraries.of(PreparationMark.State.class),
                days().optional(),
                text(),
                text(),
                text(),
                text())
            .as(PreparationMark::new);
    Arbitrary<OwnPreparation> own =
        Combinators.combine(
                Arbitraries.of("p-1", "p-2", "é"),
                Arbitraries.of(PreparationKind.class),
                Arbitraries.of(
                    List.of(Tooth.of(36)),
                    List.of(Tooth.of(14), Tooth.of(15)),
                    List.of(Tooth.of(48))),
                text(),
                text().map(t -> "aim" + t),
                text())
            .as(OwnPreparation::new);
    return Combinators.combine(
            marks.list().uniqueElements(PreparationMark::key).ofMaxSize(3),
            own.list().uniqueElements(OwnPreparation::id).ofMaxSize(2))
        .as(Preparations::new);
  }

  private static Arbitrary<StagePlan> stagePlans() {
    Arbitrary<PlannedStage> stages =
        Combinators.combine(
                Arbitraries.of(true, false),
                Arbitraries.integers().between(0, 1000).optional(),
                days().optional(),
                Arbitraries.of(LocalTime.of(14, 30), LocalTime.MIDNIGHT).optional(),
                days().optional(),
                text())
            .as(PlannedStage::new);
    return Combinators.combine(
            Arbitraries.of(TreatmentStage.class).optional(),
            days().optional(),
            Arbitraries.of(true, false),
            Arbitraries.maps(Arbitraries.of(TreatmentStage.class), stages).ofMaxSize(3))
        .as(StagePlan::new);
  }

  private static Arbitrary<Signature> signatures() {
    return Combinators.combine(
            Arbitraries.of(Signature.Manner.class),
            text().map(t -> "A" + t),
            text(),
            days(),
            text())
        .as(Signature::new);
  }

  private static Arbitrary<Coursework> coursework() {
    return Combinators.combine(
            text(),
            Arbitraries.of(true, false),
            Arbitraries.of(true, false),
            Arbitraries.of(true, false),
            Arbitraries.maps(Arbitraries.of("lower/clasp-1", "upper/rest-1"), text()).ofMaxSize(2))
        .as(Coursework::new);
  }

  private static Arbitrary<List<IssuedRevision>> issued() {
    return Combinators.combine(days(), text().map(t -> "h" + t))
        .as((day, hash) -> new IssuedRevision(1, day, hash))
        .list()
        .ofMaxSize(1);
  }

  /** Texts with everything that is awkward in JSON; often empty. */
  public static Arbitrary<String> text() {
    Arbitrary<String> awkward =
        Arbitraries.of(
                "a", "Z", "7", " ", "\"", "\\", "/", "~", "\n", "\t", "\u0001", "é", "–", "漢", "🦷",
                "{", "}", "[", "]", ",", ":", "\u2028")
            .list()
            .ofMaxSize(10)
            .map(parts -> String.join("", parts));
    return Arbitraries.frequencyOf(
        net.jqwik.api.Tuple.of(1, Arbitraries.just("")), net.jqwik.api.Tuple.of(3, awkward));
  }

  /** Some unknown members in places that the case has. */
  private static Arbitrary<Map<String, String>> extrasOf(Case c) {
    Arbitrary<String> names =
        Arbitraries.of("x-one", "x~0two", "x~1three", "x ü", "x-").map(n -> "/" + n);
    Arbitrary<String> pointers =
        Combinators.combine(Arbitraries.of(objectsOf(c)), names).as(String::concat);
    return Arbitraries.maps(pointers, json()).ofMaxSize(6).map(TreeMap::new);
  }

  /** Pointers of all objects of a case that may hold members of any name. */
  private static List<String> objectsOf(Case c) {
    List<String> out = new ArrayList<>(List.of("", "/prescription"));
    if (c.profile().standing() == Profile.Standing.OWN) {
      out.addAll(List.of("/profile", "/profile/limits/cast-arm-length"));
    }
    for (Arch arch : Arch.values()) {
      String at = "/" + arch.code();
      out.addAll(List.of(at, at + "/softTissues", at + "/design"));
      ArchChart chart = c.chart(arch);
      for (Tooth t : Tooth.in(arch)) {
        out.add(at + "/teeth/" + t);
        chart
            .tooth(t)
            .undercuts()
            .keySet()
            .forEach(
                zone ->
                    out.add(
                        at
                            + "/teeth/"
                            + t
                            + "/undercuts/"
                            + zone.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')));
      }
      c.design(arch).components().stream()
          .filter(p -> !(p instanceof saddlewright.design.UnknownComponent))
          .forEach(p -> out.add(at + "/design/components/" + p.id()));
      c.design(arch).stream(saddlewright.design.MajorConnector.class)
          .forEach(m -> out.add(at + "/design/components/" + m.id() + "/shape"));
    }
    Map<String, Integer> seen = new HashMap<>();
    for (Waiver w : c.waivers()) {
      int nth = seen.merge(w.findingKey(), 1, Integer::sum);
      out.add(
          "/waivers/"
              + (w.findingKey() + (nth == 1 ? "" : "#" + nth))
                  .replace("~", "~0")
                  .replace("/", "~1"));
    }
    return out;
  }

  /** JSON values as text without spaces. */
  static Arbitrary<String> json() {
    Arbitrary<String> leaves =
        Arbitraries.of(
            "null",
            "true",
            "0",
            "-17",
            "1.10",
            "0.000",
            "123456789012345678901234567890",
            "3.14159265358979323846264338327950288",
            "\"\"",
            "\"ü/\\n\\\"\"",
            "[]",
            "{}");
    return Arbitraries.lazyOf(
        () -> leaves,
        () -> leaves,
        () -> json().list().ofMaxSize(2).map(i -> "[" + String.join(",", i) + "]"),
        () ->
            Combinators.combine(json(), json()).as((a, b) -> "{\"z\":" + a + ",\"a\":" + b + "}"));
  }
}
