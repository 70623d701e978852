package io.faultwright.syntax;

import io.faultwright.diagnostic.Problem;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Locale;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Says in a trainer's words where and why a text is not YAML. */
final class SyntaxMistake {
  private static final String GENERAL_HELP =
      "check the indentation, and put texts with `:`, `#`, `{` or `[` in quotes";

  /**
   * Our words for a kind of mistake.
   *
   * @param sign part of the library's text by which the kind is told
   * @param message what is wrong
   * @param help the cure
   */
  private record Wording(String sign, String message, String help) {}

  private static final List<Wording> WORDINGS =
      List.of(
          new Wording(
              "levels deep",
              "lists and maps are nested more than 50 levels deep here",
              "write it flatter; no part of a knowledge base needs this"),
          new Wording(
              "(tab)",
              "a tab stands where a value or an indentation is expected",
              "indent with spaces"),
          new Wording(
              "found character '`'",
              "a value may not begin with a backtick",
              "put the text in quotes"),
          new Wording(
              "found character '@'", "a value may not begin with `@`", "put the text in quotes"),
          new Wording(
              "found character '%'", "a value may not begin with `%`", "put the text in quotes"),
          new Wording(
              "cannot start any token",
              "a value may not begin with this character here",
              "put the text in quotes; for a comparison write words, as in `above 65`"),
          new Wording(
              "mapping values are not allowed",
              "a colon is not expected here",
              "put a text that contains `: ` in quotes, or begin the key on a line of its own,"
                  + " indented like the keys beside it"),
          new Wording(
              "mapping keys are not allowed",
              "a key is not expected here",
              "begin the key on a line of its own; put a text that begins with `? ` in quotes"),
          new Wording(
              "sequence entries are not allowed",
              "a list entry `- ` is not expected here",
              "begin the list on the next line; put a text that begins with `- ` in quotes"),
          new Wording(
              "could not find expected ':'",
              "a key without its colon",
              "write `key: value`; check the indentation if this belongs to the line above"),
          new Wording(
              "unexpected end of stream",
              "a quote is opened here and never closed",
              "close it with the same quote"),
          new Wording(
              "unexpected document separator",
              "a quote is opened here and not closed before `---` or `...`",
              "close it with the same quote"),
          new Wording(
              "unknown escape character",
              "an unknown escape after `\\` in double quotes",
              "use single quotes, or write the backslash twice"),
          new Wording(
              Events.WRONG_ESCAPE,
              "an escape after `\\` with a wrong number in double quotes",
              "use single quotes, or write the backslash twice"),
          new Wording(
              "expected escape sequence",
              "an incomplete escape after `\\` in double quotes",
              "use single quotes, or write the backslash twice"),
          new Wording(
              "scanning a block scalar",
              "`>` or `|` starts a block of text, and this does not belong behind it",
              "for a comparison write words, as in `above 65`; else put the text in quotes"),
          new Wording(
              "parsing a block mapping",
              "this line does not fit the indentation of the lines above",
              "indent keys of one map equally"),
          new Wording(
              "parsing a block collection",
              "this line does not fit the indentation of the list above",
              "indent the entries `- ` of one list equally"),
          new Wording(
              "',' or '}'",
              "a comma or `}` is expected here",
              "separate entries by commas, close with `}`; put texts with `,`, `?`, `[` or `{` in quotes"),
          new Wording(
              "',' or ']'",
              "a comma or `]` is expected here",
              "separate entries by commas, close with `]`; put texts with `,`, `?`, `[` or `{` in quotes"),
          new Wording(
              "scanning an alias",
              "a value may not begin with `*`",
              "put a text that begins with `*` in quotes"),
          new Wording(
              "scanning an anchor",
              "a value may not begin with `&`",
              "put a text that begins with `&` in quotes"),
          new Wording(
              "scanning a tag",
              "a value may not begin with `!`",
              "put a text that begins with `!` in quotes"),
          new Wording(
              "undefined tag handle",
              "a value may not begin with `!`",
              "put a text that begins with `!` in quotes"),
          new Wording("directive", "a line may not begin with `%` here", "put the text in quotes"),
          new Wording(
              "document start",
              "this line does not belong to what stands above it",
              "check the indentation: all sections of a file begin in the first column"),
          new Wording(
              "expected the node content",
              "a value is missing or out of place here",
              "write the value, or put a text that begins with `,`, `]` or `}` in quotes"));

  private static final Wording UNKNOWN =
      new Wording("", "the text cannot be read as YAML from here on", GENERAL_HELP);

  private final MarkedYAMLException mistake;
  private final Lines lines;

  SyntaxMistake(MarkedYAMLException mistake, Lines lines) {
    this.mistake = mistake;
    this.lines = lines;
  }

  Problem problem() {
    Wording wording = wording();
    return Problem.at(place(wording), wording.message(), wording.help());
  }

  private Wording wording() {
    String said = (mistake.getProblem() + " " + mistake.getContext()).toLowerCase(Locale.ROOT);
    return WORDINGS.stream()
        .filter(wording -> said.contains(wording.sign()))
        .findFirst()
        .orElse(UNKNOWN);
  }

  private Place place(Wording wording) {
    boolean begins =
        wording.message().contains("opened here") || wording.message().contains("key without");
    if (begins && mistake.getContextMark() != null) {
      return lines.at(mistake.getContextMark());
    }
    return mistake.getProblemMark() == null
        ? lines.place(0, 0, 1)
        : lines.at(mistake.getProblemMark());
  }
}
