package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Consumer;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/** One object of a case file while it is written, in the order of the calls. */
final class MembersOut {
  private final ObjectNode node = JsonNodeFactory.withExactBigDecimals(true).objectNode();
  private final Place place;
  private final KeptMembers kept;

  private MembersOut(Place place, KeptMembers kept) {
    this.place = place;
    this.kept = kept;
  }

  /** The object that the writer fills, followed by what was kept of it from the file. */
  static ObjectNode write(Place place, KeptMembers kept, Consumer<MembersOut> writer) {
    MembersOut members = new MembersOut(place, kept);
    writer.accept(members);
    kept.in(place).forEach((name, value) -> members.node.putIfAbsent(name, value));
    return members.node;
  }

  Place place() {
    return place;
  }

  void text(String name, String value) {
    node.put(name, value);
  }

  void textUnlessEmpty(String name, String value) {
    if (!value.isEmpty()) {
      node.put(name, value);
    }
  }

  void date(String name, Optional<LocalDate> value) {
    value.ifPresent(d -> node.put(name, d.toString()));
  }

  /** Whether members were kept that stand in the object of the name. */
  boolean keepsBelow(String name) {
    return !kept.in(place.member(name)).isEmpty();
  }

  void flagIfSet(String name, boolean value) {
    if (value) {
      node.put(name, true);
    }
  }

  void whole(String name, int value) {
    node.put(name, value);
  }

  void whole(String name, Optional<Integer> value) {
    value.ifPresent(v -> node.put(name, v));
  }

  void number(String name, double value) {
    node.set(name, numberNode(value));
  }

  void number(String name, Optional<Double> value) {
    value.ifPresent(v -> number(name, v));
  }

  /** Whole numbers without a point, others with the shortest digits that mean the same double. */
  private JsonNode numberNode(double value) {
    if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      return node.numberNode((long) value);
    }
    return node.numberNode(new BigDecimal(Double.toString(value)));
  }

  void word(String name, Enum<?> value) {
    node.put(name, Word.of(value));
  }

  void word(String name, Optional<? extends Enum<?>> value) {
    value.ifPresent(v -> word(name, v));
  }

  void tooth(String name, Tooth tooth) {
    node.put(name, tooth.fdi());
  }

  void span(Span span) {
    tooth("from", span.first());
    tooth("to", span.last());
  }

  void teeth(String name, Collection<Tooth> teeth) {
    if (!teeth.isEmpty()) {
      ArrayNode list = node.putArray(name);
      teeth.forEach(t -> list.add(t.fdi()));
    }
  }

  void words(String name, Collection<? extends Enum<?>> values) {
    if (!values.isEmpty()) {
      ArrayNode list = node.putArray(name);
      values.forEach(v -> list.add(Word.of(v)));
    }
  }

  /** A member object, left out when nothing is written into it. */
  void object(String name, Consumer<MembersOut> writer) {
    objectAt(name, place.member(name), writer);
  }

  /** The same, at a place that is named otherwise than its member. */
  void objectAt(String name, Place at, Consumer<MembersOut> writer) {
    ObjectNode object = write(at, kept, writer);
    if (!object.isEmpty()) {
      node.set(name, object);
    }
  }

  /** A list of whatever the writer adds, left out when it adds nothing. */
  void list(String name, Consumer<Consumer<JsonNode>> writer) {
    ArrayNode list = node.arrayNode();
    writer.accept(list::add);
    if (!list.isEmpty()) {
      node.set(name, list);
    }
  }

  /** An item for a list, at a place of its own. */
  ObjectNode item(Place at, Consumer<MembersOut> writer) {
    return write(at, kept, writer);
  }
}
