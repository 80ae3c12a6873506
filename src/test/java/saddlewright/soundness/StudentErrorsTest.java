package saddlewright.soundness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.json.CaseStore;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.MajorConnector;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Finding;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;

/**
 * The mistakes that teachers say their students make are caught where they lie. Each is made in a
 * design that is otherwise sound; those that a source draws in full are cases of their own.
 */
class StudentErrorsTest {
  private final List<DynamicTest> errors = new ArrayList<>();

  @TestFactory
  Stream<DynamicTest> are_caught_where_they_lie() throws Exception {
    supportAndClasps();
    tips();
    axes();
    connectors();
    return errors.stream();
  }

  private void supportAndClasps() throws Exception {
    Situation one = worked("w03-lower-class-1-stress-release");
    Situation three = worked("w16-lower-class-3-lingual-undercuts");
    made(
        "a clasp without a rest (teaching notes on the requirements of a clasp unit)",
        one,
        without(one, Rest.class, 34),
        Severity.MUST,
        tooth(one, 34));
    made(
        "a clasp without a reciprocal element (the same; British undergraduate notes)",
        three,
        without(three, ReciprocalArm.class, 47),
        Severity.MUST,
        tooth(three, 47));
    Situation twoArms =
        next(
            three,
            three
                .design()
                .without(on(three, ReciprocalArm.class, 47).id())
                .plus(
                    Clasp.of(
                        ComponentId.of("second"),
                        Tooth.of(47),
                        ClaspForm.CIRCUMFERENTIAL,
                        Zone.DISTOBUCCAL,
                        End.MESIAL)));
    made(
        "two retentive arms on one tooth (Oklahoma questions 6 and 152)",
        three,
        undercut(twoArms, 47, Zone.DISTOBUCCAL, 0.25),
        Severity.MUST,
        f -> f.ruleId().equals("teeth-bear-one-retentive-arm") && tooth(twoArms, 47).is(f));
    ArchDesign opposed =
        three
            .design()
            .with(tipped(on(three, Clasp.class, 37), Zone.DISTOBUCCAL))
            .with(faced(on(three, ReciprocalArm.class, 37), Face.LINGUAL));
    made(
        "lingual retention on one side and buccal on the other (teaching notes on clasp units;"
            + " Faraone)",
        three,
        undercut(next(three, opposed), 37, Zone.DISTOBUCCAL, 0.25),
        Severity.SHOULD,
        tooth(three, 37),
        tooth(three, 47));
    Rest rest = on(one, Rest.class, 44);
    Rest bare =
        new Rest(rest.id(), rest.tooth(), rest.site(), rest.form(), Rest.Seat.UNPREPARED, false);
    made(
        "a closed bite over an unprepared rest (slides after Br Dent J 2001;190, preparation)",
        one,
        tooth(
            next(one, one.design().with(bare)),
            44,
            f -> f.withClearance(rest.site(), Optional.of(0.0))),
        Severity.MUST,
        tooth(one, 44));
    ArchDesign bases = one.design();
    for (Rest r : one.design().all(Rest.class)) {
      bases = bases.without(r.id());
    }
    made(
        "bases without any rest (Daya and Owen, S Afr Dent J 2022;77(8): 8 of 95 bases had one)",
        one,
        next(one, bases),
        Severity.MUST,
        f -> isSaddle(f, one.design()));
  }

  private void tips() throws Exception {
    Situation one = worked("w02-lower-class-1-uneven-ends");
    Situation three = worked("w16-lower-class-3-lingual-undercuts");
    made(
        "an I-bar distal of the greatest prominence (Oklahoma question 125)",
        one,
        undercut(
            next(one, one.design().with(tipped(on(one, Clasp.class, 34), Zone.DISTOBUCCAL))),
            34,
            Zone.DISTOBUCCAL,
            0.25),
        Severity.SHOULD,
        tooth(one, 34));
    made(
        "an I-bar above the survey line (Oklahoma question 125)",
        one,
        undercut(one, 34, Zone.MID_BUCCAL, 0),
        Severity.SHOULD,
        tooth(one, 34));
    made(
        "an undercut that only tilting the cast would give (textbook chapter on design: it must be"
            + " there at zero tilt)",
        three,
        undercut(three, 47, Zone.DISTOLINGUAL, 0),
        Severity.SHOULD,
        tooth(three, 47));
  }

  private void axes() throws Exception {
    Situation before = faulty("w08-cast-arm-before-axis");
    drawn(
        "a cast tip in front of the axis (Oklahoma questions 12 and 127)",
        before,
        Severity.SHOULD,
        f -> !f.ruleId().equals("cast-arms-are-long-enough") && tooth(before, 34).is(f));
    Situation levered = faulty("w18-distal-rest-cast-arm");
    drawn(
        "a cast arm from a distal rest at a free end (Oklahoma questions 78 and 163)",
        levered,
        Severity.SHOULD,
        f -> !f.ruleId().equals("cast-arms-are-long-enough") && tooth(levered, 35).is(f));
    Situation none = faulty("w19-no-forward-rest");
    drawn(
        "no indirect retainer in Class I (a prosthodontist's page calls it the most forgotten part;"
            + " Davenport et al., Br Dent J 2001;190)",
        none,
        Severity.MUST,
        f -> isSaddle(f, none.design()) || isArch(f));
    Situation four = worked("w24-upper-class-4-second-molars");
    ArchDesign front = four.design();
    for (int molar : new int[] {17, 27}) {
      front = front.without(on(four, Rest.class, molar).id());
    }
    for (int canine : new int[] {13, 23}) {
      Rest r = on(four, Rest.class, canine);
      front = front.with(new Rest(r.id(), r.tooth(), r.site(), r.form(), r.seat(), true));
    }
    made(
        "an indirect retainer on the saddle's side of the axis (Davenport et al., Br Dent J"
            + " 2001;190)",
        four,
        next(four, front),
        Severity.MUST,
        tooth(four, 13),
        tooth(four, 23));
    Situation pair = faulty("w25-embrasure-pair");
    drawn(
        "an embrasure pair where two separate clasps would serve (student notes of Stewart's"
            + " textbook, the worse of two versions)",
        pair,
        Severity.CONSIDER,
        f ->
            !f.ruleId().equals("cast-arms-are-long-enough")
                && (tooth(pair, 46).is(f) || tooth(pair, 47).is(f)));
  }

  private void connectors() throws Exception {
    Situation plate = faulty("w05-plate-without-rests");
    drawn(
        "a lingual plate to the gum line without rests (Oklahoma question 71)",
        plate,
        Severity.MUST,
        f -> isConnector(f, plate.design()));
    drawn(
        "a one-sided denture (Br Dent J correspondence; University of Western Australia)",
        faulty("w22-one-sided"),
        Severity.MUST,
        f -> f.ruleId().equals("dentures-are-not-one-sided"));
    Situation palate = faulty("full-palate-for-one-premolar");
    drawn(
        "a full palate with every margin covered for one premolar (collected design errors, 2021)",
        palate,
        Severity.SHOULD,
        f -> isConnector(f, palate.design()) || isArch(f));
    Situation caries = faulty("w23-caries-untreated");
    drawn(
        "components on carious teeth (Ankara textbook; case report in hjhs 2021)",
        caries,
        Severity.MUST,
        tooth(caries, 35),
        tooth(caries, 43));
  }

  /** Classifying the arch as it is and not as it will be (examination notes). */
  @Test
  void class_is_found_after_planned_extractions() throws Exception {
    Situation s = worked("w11-upper-class-3-lone-molar");
    Situation later = tooth(s, 17, f -> f.withStatus(ToothStatus.TO_BE_EXTRACTED));
    assertThat(s.classification().label()).isEqualTo("Kennedy Class III");
    assertThat(later.classification().label()).isEqualTo("Kennedy Class II");
  }

  /** Counting lost teeth as modifications (University of Western Australia): areas count. */
  @Test
  void modifications_are_areas() throws Exception {
    assertThat(worked("w01-upper-class-3-mod-1").classification().modifications()).isEqualTo(1);
  }

  // The tools.

  @FunctionalInterface
  private interface Place {
    boolean is(Finding finding);
  }

  /** An error made in a design that is otherwise sound: only what is new counts. */
  private void made(
      String name, Situation sound, Situation faulty, Severity least, Place... places) {
    caught(name, SeededFault.weights(sound).keySet(), faulty, least, places);
  }

  /** An error that its source draws. */
  private void drawn(String name, Situation faulty, Severity least, Place... places) {
    caught(name, Set.of(), faulty, least, places);
  }

  private void caught(
      String name, Set<String> known, Situation faulty, Severity least, Place... places) {
    errors.add(
        dynamicTest(
            name,
            () ->
                assertThat(SeededFault.findings(faulty))
                    .filteredOn(f -> !known.contains(f.key()))
                    .filteredOn(f -> Stream.of(places).anyMatch(p -> p.is(f)))
                    .extracting(Finding::severity)
                    .anyMatch(x -> x.isAtLeast(least))));
  }

  /** On the tooth or on a component of that tooth alone. */
  private static Place tooth(Situation faulty, int fdi) {
    List<Tooth> only = List.of(Tooth.of(fdi));
    return f ->
        f.subjects().get(0).equals(Subject.of(only.get(0)))
            || chief(f, faulty.design()).map(c -> c.teeth().equals(only)).orElse(false);
  }

  private static boolean isSaddle(Finding f, ArchDesign d) {
    return f.subjects().get(0) instanceof Subject.OfArea
        || chief(f, d).map(c -> c instanceof Saddle).orElse(false);
  }

  private static boolean isArch(Finding f) {
    return f.subjects().get(0) instanceof Subject.OfArch;
  }

  private static boolean isConnector(Finding f, ArchDesign d) {
    return chief(f, d).map(c -> c instanceof MajorConnector).orElse(false);
  }

  private static Optional<Component> chief(Finding f, ArchDesign d) {
    return f.subjects().get(0).component().flatMap(d::find);
  }

  private static Situation worked(String name) throws Exception {
    return load(SoundCases.WORKED.resolve(name + ".json"));
  }

  private static Situation faulty(String name) throws Exception {
    return load(SoundCases.WORKED.resolve("faulty").resolve(name + ".json"));
  }

  private static Situation load(Path file) throws Exception {
    Assessment a = Assessment.of(CaseStore.load(file));
    return a.upper().design().components().isEmpty() ? a.arch(Arch.LOWER) : a.arch(Arch.UPPER);
  }

  private static <C extends Component> C on(Situation s, Class<C> kind, int tooth) {
    return s.design().stream(kind)
        .filter(c -> c.teeth().contains(Tooth.of(tooth)))
        .findFirst()
        .orElseThrow();
  }

  private static Situation without(Situation s, Class<? extends Component> kind, int tooth) {
    return next(s, s.design().without(on(s, kind, tooth).id()));
  }

  private static Clasp tipped(Clasp c, Zone tip) {
    return new Clasp(c.id(), c.tooth(), c.form(), tip, c.origin(), c.material());
  }

  private static ReciprocalArm faced(ReciprocalArm a, Face face) {
    return new ReciprocalArm(a.id(), a.tooth(), face, a.origin());
  }

  private static Situation undercut(Situation s, int tooth, Zone zone, double mm) {
    return tooth(
        s, tooth, f -> f.withUndercut(zone, Optional.of(new Undercut(mm, Optional.of(2.0)))));
  }

  private static Situation tooth(Situation s, int tooth, UnaryOperator<ToothFindings> change) {
    Tooth t = Tooth.of(tooth);
    return s.next(
        s.chart().with(t, change.apply(s.chart().tooth(t))), s.opposing(), s.design(), s.profile());
  }

  private static Situation next(Situation s, ArchDesign design) {
    return s.next(s.chart(), s.opposing(), design, s.profile());
  }
}
