package saddlewright.command;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import saddlewright.casefile.Cautions;
import saddlewright.classification.Classification;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Arch;
import saddlewright.rules.Credit;
import saddlewright.rules.Finding;
import saddlewright.rules.OpenQuestion;
import saddlewright.rules.Profile;
import saddlewright.rules.Report;

/** The report of a check as JSON for programs. */
final class CheckJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private CheckJson() {}

  static String write(List<CheckedCase> cases) {
    ObjectNode root = NODES.objectNode();
    root.put("format", "saddlewright-check");
    root.put("formatVersion", 1);
    ArrayNode list = root.putArray("cases");
    cases.forEach(c -> list.add(one(c)));
    root.put("caution", Cautions.LINE);
    return pretty(root);
  }

  static String pretty(ObjectNode root) {
    try {
      return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values can always be written", e);
    }
  }

  private static ObjectNode one(CheckedCase c) {
    ObjectNode n = NODES.objectNode();
    n.put("file", c.file().toString());
    n.put("reference", c.assessment().subject().reference());
    for (Arch arch : Arch.values()) {
      Classification k = c.assessment().arch(arch).classification();
      ObjectNode a = n.putObject(arch.code());
      a.put("class", code(k.kennedy()));
      a.put("modifications", k.modifications());
      ArrayNode reasons = a.putArray("reasoning");
      k.reasoning().forEach(reasons::add);
    }
    n.set("profile", profile(c.assessment().subject().profile()));
    Report report = c.assessment().report();
    ArrayNode findings = n.putArray("findings");
    report.entries().forEach(e -> findings.add(finding(e)));
    ArrayNode questions = n.putArray("questions");
    report.questions().forEach(q -> questions.add(question(q)));
    ArrayNode argument = n.putArray("argument");
    report.credits().forEach(x -> argument.add(credit(x)));
    n.set("tally", tally(report));
    return n;
  }

  /** The school that judges: "standing" tells a built-in one, a school's own and a stand-in. */
  static ObjectNode profile(Profile p) {
    ObjectNode n = NODES.objectNode();
    n.put("id", p.id());
    n.put("name", p.title());
    n.put("version", p.version());
    n.put("standing", p.standing().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    p.basedOn().ifPresent(b -> n.put("basedOn", b));
    return n;
  }

  private static ObjectNode question(OpenQuestion q) {
    ObjectNode n = NODES.objectNode();
    n.put("field", q.field().key());
    n.put("arch", q.field().arch().code());
    ArrayNode teeth = n.putArray("teeth");
    q.field().teeth().forEach(t -> teeth.add(t.fdi()));
    n.put("sentence", q.sentence());
    ArrayNode rules = n.putArray("rules");
    q.ruleIds().forEach(rules::add);
    ArrayNode subjects = n.putArray("subjects");
    q.subjects().forEach(s -> subjects.add(s.key()));
    return n;
  }

  private static ObjectNode credit(Credit c) {
    ObjectNode n = NODES.objectNode();
    n.put("rule", c.ruleId());
    n.put("subject", c.subject().key());
    n.put("words", c.words());
    return n;
  }

  private static ObjectNode tally(Report report) {
    ObjectNode n = NODES.objectNode();
    n.put("judged", report.tally().judged());
    n.put("unanswered", report.tally().unanswered());
    n.put("notApplicable", report.tally().notApplicable());
    n.put("notTaught", report.tally().notTaught());
    return n;
  }

  private static ObjectNode finding(Report.Entry e) {
    Finding f = e.finding();
    ObjectNode n = NODES.objectNode();
    n.put("key", f.key());
    n.put("rule", f.ruleId());
    n.put("severity", f.severity().code());
    n.put("state", e.state().name().toLowerCase(Locale.ROOT));
    n.put("arch", f.arch().code());
    ArrayNode subjects = n.putArray("subjects");
    f.subjects().forEach(s -> subjects.add(s.key()));
    n.put("sentence", f.sentence());
    n.put("measured", f.comparison().actual());
    n.put("required", f.comparison().required());
    ArrayNode remedies = n.putArray("remedies");
    f.remedies().forEach(r -> remedies.add(r.label()));
    e.waiver()
        .ifPresent(
            w -> {
              ObjectNode o = n.putObject("waiver");
              o.put("reason", w.reason());
              o.put("role", w.role());
              o.put("date", w.date().toString());
            });
    return n;
  }

  static String code(KennedyClass k) {
    return switch (k) {
      case I, II, III, IV -> k.name();
      case NONE -> "none";
      case EDENTULOUS -> "edentulous";
    };
  }
}
