package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Function;
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
import saddlewright.dentition.Tooth;

/** What the prescription says besides the design; what is not filled in is left out. */
final class PrescriptionFormat {
  private PrescriptionFormat() {}

  static PrescriptionDetails read(MembersIn m) {
    PrescriptionDetails none = PrescriptionDetails.EMPTY;
    return new PrescriptionDetails(
        m.word("kind", DocumentKind.class).orElse(none.kind()),
        m.word("regime", Regime.class).orElse(none.regime()),
        m.object("answers", PrescriptionFormat::answers).orElse(Map.of()),
        items(m, "enclosures", PrescriptionFormat::enclosure),
        items(m, "disinfections", PrescriptionFormat::disinfection),
        m.object("preparations", PrescriptionFormat::preparations).orElse(Preparations.NONE),
        m.object("stages", PrescriptionFormat::stages).orElse(StagePlan.EMPTY),
        m.object("signature", PrescriptionFormat::signature),
        m.object("coursework", PrescriptionFormat::coursework).orElse(Coursework.EMPTY),
        items(m, "issued", PrescriptionFormat::issued));
  }

  static void write(PrescriptionDetails p, MembersOut m) {
    PrescriptionDetails none = PrescriptionDetails.EMPTY;
    if (p.kind() != none.kind()) {
      m.word("kind", p.kind());
    }
    if (p.regime() != none.regime()) {
      m.word("regime", p.regime());
    }
    m.object("answers", a -> p.answers().forEach((item, answer) -> write(item, answer, a)));
    items(m, "enclosures", p.enclosures(), PrescriptionFormat::write);
    items(m, "disinfections", p.disinfections(), PrescriptionFormat::write);
    m.object("preparations", o -> write(p.preparations(), o));
    m.object("stages", o -> write(p.stages(), o));
    p.signature().ifPresent(s -> m.object("signature", o -> write(s, o)));
    m.object("coursework", o -> write(p.coursework(), o));
    items(m, "issued", p.issued(), PrescriptionFormat::write);
  }

  private static Map<Item, Answer> answers(MembersIn m) {
    Map<Item, Answer> out = new EnumMap<>(Item.class);
    for (Item item : Item.values()) {
      m.textOrObject(member(item), Answer::of, PrescriptionFormat::answer)
          .ifPresent(a -> out.put(item, a));
    }
    return out;
  }

  private static Answer answer(MembersIn m) {
    return new Answer(
        m.requiredWord("state", Answer.State.class), m.textOrEmpty("text"), m.date("by"));
  }

  private static void write(Item item, Answer answer, MembersOut m) {
    if (answer.state() == Answer.State.GIVEN && !m.keepsBelow(member(item))) {
      m.text(member(item), answer.text());
      return;
    }
    m.object(
        member(item),
        o -> {
          o.word("state", answer.state());
          o.textUnlessEmpty("text", answer.text());
          o.date("by", answer.by());
        });
  }

  /** The key of a field as members are spelt, such as {@code toothShade}. */
  static String member(Item item) {
    String[] words = item.key().split("-");
    StringBuilder out = new StringBuilder(words[0]);
    for (int i = 1; i < words.length; i++) {
      out.append(Character.toUpperCase(words[i].charAt(0))).append(words[i].substring(1));
    }
    return out.toString();
  }

  private static Enclosure enclosure(MembersIn m) {
    return new Enclosure(
        m.requiredWord("kind", Enclosure.Kind.class),
        m.whole("count").orElse(1),
        m.textOrEmpty("detail"));
  }

  private static void write(Enclosure e, MembersOut m) {
    m.word("kind", e.kind());
    m.whole("count", e.count());
    m.textUnlessEmpty("detail", e.detail());
  }

  private static Disinfection disinfection(MembersIn m) {
    return new Disinfection(
        m.requiredText("what"),
        m.textOrEmpty("agent"),
        m.whole("minutes"),
        m.textOrEmpty("by"),
        m.date("on"));
  }

  private static void write(Disinfection d, MembersOut m) {
    m.text("what", d.what());
    m.textUnlessEmpty("agent", d.agent());
    m.whole("minutes", d.minutes());
    m.textUnlessEmpty("by", d.by());
    m.date("on", d.on());
  }

  private static Preparations preparations(MembersIn m) {
    return new Preparations(
        items(m, "marks", PrescriptionFormat::mark), items(m, "own", PrescriptionFormat::own));
  }

  private static void write(Preparations p, MembersOut m) {
    items(m, "marks", p.marks(), PrescriptionFormat::write);
    items(m, "own", p.own(), PrescriptionFormat::write);
  }

  private static PreparationMark mark(MembersIn m) {
    return new PreparationMark(
        m.requiredText("key"),
        m.word("state", PreparationMark.State.class).orElse(PreparationMark.State.PLANNED),
        m.date("on"),
        m.textOrEmpty("by"),
        m.textOrEmpty("checkedBy"),
        m.textOrEmpty("target"),
        m.textOrEmpty("note"));
  }

  private static void write(PreparationMark p, MembersOut m) {
    m.text("key", p.key());
    m.word("state", p.state());
    m.date("on", p.on());
    m.textUnlessEmpty("by", p.by());
    m.textUnlessEmpty("checkedBy", p.checkedBy());
    m.textUnlessEmpty("target", p.target());
    m.textUnlessEmpty("note", p.note());
  }

  private static OwnPreparation own(MembersIn m) {
    List<Tooth> teeth = m.teeth("teeth");
    return new OwnPreparation(
        m.requiredText("id"),
        m.requiredWord("kind", PreparationKind.class),
        teeth,
        m.textOrEmpty("surface"),
        m.requiredText("target"),
        m.textOrEmpty("reason"));
  }

  private static void write(OwnPreparation p, MembersOut m) {
    m.text("id", p.id());
    m.word("kind", p.kind());
    m.teeth("teeth", p.teeth());
    m.textUnlessEmpty("surface", p.surface());
    m.text("target", p.target());
    m.textUnlessEmpty("reason", p.reason());
  }

  private static StagePlan stages(MembersIn m) {
    return new StagePlan(
        m.word("requested", TreatmentStage.class),
        m.date("fitting"),
        m.flag("everyDay"),
        m.objectsByWord("plan", TreatmentStage.class, PrescriptionFormat::stage));
  }

  private static void write(StagePlan p, MembersOut m) {
    m.word("requested", p.requested());
    m.date("fitting", p.fitting());
    m.flagIfSet("everyDay", p.everyDay());
    m.object("plan", o -> p.stages().forEach((s, at) -> o.object(Word.of(s), x -> write(at, x))));
  }

  private static PlannedStage stage(MembersIn m) {
    return new PlannedStage(
        m.flag("leftOut"),
        m.whole("days"),
        m.date("due"),
        m.time("time"),
        m.date("done"),
        m.textOrEmpty("by"));
  }

  private static void write(PlannedStage p, MembersOut m) {
    m.flagIfSet("leftOut", p.leftOut());
    m.whole("days", p.days());
    m.date("due", p.due());
    p.time().ifPresent(t -> m.text("time", t.toString()));
    m.date("done", p.done());
    m.textUnlessEmpty("by", p.by());
  }

  private static Signature signature(MembersIn m) {
    return new Signature(
        m.requiredWord("manner", Signature.Manner.class),
        m.requiredText("name"),
        m.textOrEmpty("registration"),
        m.requiredDate("on"),
        m.textOrEmpty("designHash"));
  }

  private static void write(Signature s, MembersOut m) {
    m.word("manner", s.manner());
    m.text("name", s.name());
    m.textUnlessEmpty("registration", s.registration());
    m.text("on", s.on().toString());
    m.textUnlessEmpty("designHash", s.designHash());
  }

  private static Coursework coursework(MembersIn m) {
    return new Coursework(
        m.textOrEmpty("candidate"),
        m.flag("justified"),
        m.flag("stepwise"),
        m.flag("sealed"),
        m.textsByName("justifications"));
  }

  private static void write(Coursework c, MembersOut m) {
    m.textUnlessEmpty("candidate", c.candidate());
    m.flagIfSet("justified", c.justified());
    m.flagIfSet("stepwise", c.stepwise());
    m.flagIfSet("sealed", c.sealed());
    m.object("justifications", o -> c.justifications().forEach(o::text));
  }

  private static IssuedRevision issued(MembersIn m) {
    return new IssuedRevision(
        m.whole("number").orElse(0), m.requiredDate("on"), m.requiredText("hash"));
  }

  private static void write(IssuedRevision r, MembersOut m) {
    m.whole("number", r.number());
    m.text("on", r.on().toString());
    m.text("hash", r.hash());
  }

  private static <T> List<T> items(MembersIn m, String list, Function<MembersIn, T> reader) {
    List<T> out = new ArrayList<>();
    List<JsonNode> nodes = m.list(list);
    for (int i = 0; i < nodes.size(); i++) {
      out.add(m.item(nodes.get(i), place(m.place(), list, i), reader));
    }
    return out;
  }

  private static <T> void items(
      MembersOut m, String list, List<T> values, BiConsumer<T, MembersOut> writer) {
    m.list(
        list,
        add -> {
          for (int i = 0; i < values.size(); i++) {
            T value = values.get(i);
            add.accept(m.item(place(m.place(), list, i), o -> writer.accept(value, o)));
          }
        });
  }

  private static Place place(Place at, String list, int index) {
    return at.item(list, Integer.toString(index), list + " no. " + (index + 1));
  }
}
