package zonewright.design;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import zonewright.formula.Outcome;
import zonewright.sheet.Remedy;
import zonewright.sheet.Rule;
import zonewright.sheet.Wording;

/** The words of a finding, and its cure. */
sealed interface FindingWords {
  /** Returns the row in words, with a colon. */
  String where();

  /** Returns what is wrong. */
  String sentence();

  /** Returns what to do about it, or nothing. */
  String cure();

  /** Returns what the program can do about it. */
  Optional<Remedy> remedy();

  /** Words that are there. */
  record Plain(String where, String sentence, String cure, Optional<Remedy> remedy)
      implements FindingWords {}

  /**
   * The words of a rule, with the values of one row.
   *
   * @param values what the cells hold that the sentences name
   * @param wording says it in words
   */
  record OfRule(String where, Rule rule, List<Outcome> values, Wording wording)
      implements FindingWords {
    @Override
    public String sentence() {
      return filled(rule.sentence());
    }

    @Override
    public String cure() {
      return filled(rule.cure());
    }

    @Override
    public Optional<Remedy> remedy() {
      return rule.remedy().map(remedy -> remedy.named(filled(remedy.name())));
    }

    private String filled(String template) {
      Object[] shown = new Object[values.size()];
      for (int i = 0; i < shown.length; i++) {
        shown[i] = wording.shown(rule.shown().get(i), values.get(i));
      }
      return new MessageFormat(template.replace("'", "''"), Locale.ROOT).format(shown);
    }
  }
}
