package zonewright.equation;

import java.util.List;

/** A text and how far it was read. */
final class Cursor {
  private final String text;
  private int at;

  Cursor(String text) {
    this.text = text;
  }

  String text() {
    return text;
  }

  int at() {
    return at;
  }

  void jump(int place) {
    at = place;
  }

  /** Goes on to what is no gap. */
  Cursor skip() {
    while (at < text.length() && NameText.gap(text.charAt(at))) {
      at++;
    }
    return this;
  }

  boolean ended() {
    return skip().at == text.length();
  }

  /** Returns the next letter that is no gap; 0 at the end. */
  char next() {
    return ended() ? 0 : text.charAt(at);
  }

  /** Takes a sign if it comes next. */
  boolean took(String sign) {
    boolean there = skip().text.startsWith(sign, at);
    at += there ? sign.length() : 0;
    return there;
  }

  /** Takes the first of some signs that comes next; empty where none does. */
  String tookOneOf(List<String> signs) {
    return signs.stream().filter(this::took).findFirst().orElse("");
  }

  /** Takes a word if it comes next, as a whole and however its capitals are. */
  boolean tookWord(String word) {
    int end = NameText.end(text, skip().at, word);
    if (end >= 0) {
      at = end;
    }
    return end >= 0;
  }
}
