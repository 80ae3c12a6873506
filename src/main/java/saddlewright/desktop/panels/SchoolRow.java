package saddlewright.desktop.panels;

import java.util.Locale;
import saddlewright.desktop.Words;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleGroup;
import saddlewright.rules.Source;
import saddlewright.rules.Threshold;
import saddlewright.rules.Weighting;

/** A line of the list of what a school teaches: a chapter, a limit, or the weight of a rule. */
interface SchoolRow {
  String name();

  /** What a profile holds here, such as "8 mm" or "must". */
  String held(Profile p);

  /** The words in which a filter looks, besides the name. */
  String moreWords(Profile p);

  default boolean departs(Profile p) {
    return !held(p).equals(held(p.base()));
  }

  default boolean matches(String words, Profile p) {
    String all = (name() + " " + moreWords(p)).toLowerCase(Locale.ROOT);
    for (String word : words.toLowerCase(Locale.ROOT).strip().split("\\s+")) {
      if (!all.contains(word)) {
        return false;
      }
    }
    return true;
  }

  private static String words(Source s, String reason) {
    return s.citation() + " " + s.evidence().words() + " " + reason;
  }

  /** A heading. */
  record Chapter(String name) implements SchoolRow {
    @Override
    public String held(Profile p) {
      return "";
    }

    @Override
    public String moreWords(Profile p) {
      return "";
    }
  }

  /** The limit for a quantity. */
  record OfLimit(Quantity quantity) implements SchoolRow {
    @Override
    public String name() {
      return Words.capital(quantity.words());
    }

    @Override
    public String held(Profile p) {
      return quantity.amount(p.limit(quantity));
    }

    @Override
    public String moreWords(Profile p) {
      Threshold t = p.limits().get(quantity);
      return words(t.source(), t.reason());
    }
  }

  /** The weight of a rule. */
  record OfRule(Rule rule) implements SchoolRow {
    @Override
    public String name() {
      return rule.claim();
    }

    @Override
    public String held(Profile p) {
      return p.teaches(rule)
          ? Words.of("severity." + p.severity(rule.stated()).code())
          : Words.of("school.not-taught");
    }

    @Override
    public String moreWords(Profile p) {
      Weighting w = p.weights().get(rule.id());
      return rule.id()
          + " "
          + RuleGroup.of(rule).title()
          + " "
          + held(p)
          + " "
          + (w == null ? words(rule.source(), "") : words(w.source(), w.reason()));
    }
  }
}
