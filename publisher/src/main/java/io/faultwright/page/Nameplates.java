package io.faultwright.page;

import io.faultwright.model.Model;
import io.faultwright.model.Nameplate;
import io.faultwright.model.Nameplate.Coded;
import io.faultwright.model.Nameplate.Digits;
import io.faultwright.model.Nameplate.Literal;
import io.faultwright.page.NameplateSection.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** How a model number is read, with a published one taken apart. */
final class Nameplates {
  private final Desk desk;

  Nameplates(Desk desk) {
    this.desk = desk;
  }

  NameplateSection of(Nameplate nameplate) {
    return new NameplateSection(
        nameplate.where(),
        nameplate.software(),
        Alphabet.sorted(desk.kb().equipment().models().values(), Model::id).stream()
            .map(model -> example(nameplate, model.id()))
            .filter(parts -> !parts.isEmpty())
            .findFirst()
            .orElse(List.of()),
        nameplate.segments().stream()
            .filter(segment -> !(segment instanceof Literal))
            .map(this::segment)
            .toList());
  }

  private Segment segment(Nameplate.Segment segment) {
    return segment instanceof Coded coded
        ? new Segment(
            desk.words().subject(coded.attribute()),
            coded.codes().entrySet().stream()
                .map(code -> new Fact(code.getKey(), meaning(coded, code.getValue())))
                .toList())
        : new Segment(digits((Digits) segment), List.of());
  }

  private String meaning(Coded coded, String value) {
    return desk.words().value(coded.attribute(), value);
  }

  private String digits(Digits digits) {
    return digits.count() == 1
        ? desk.say("Size, one digit")
        : desk.say("Size, {0} digits", digits.count());
  }

  /** The parts of a model number with their meanings; none where the nameplate cannot read it. */
  private List<Fact> example(Nameplate nameplate, String number) {
    Matcher matcher =
        Pattern.compile(
                nameplate.segments().stream().map(Nameplates::group).collect(Collectors.joining()))
            .matcher(number);
    List<Fact> parts = new ArrayList<>();
    if (matcher.matches()) {
      for (int i = 0; i < nameplate.segments().size(); i++) {
        String code = matcher.group(i + 1);
        parts.add(new Fact(code, said(nameplate.segments().get(i), code)));
      }
    }
    return parts;
  }

  private static String group(Nameplate.Segment segment) {
    if (segment instanceof Literal literal) {
      return "(" + Pattern.quote(literal.text()) + ")";
    }
    return segment instanceof Coded coded
        ? coded.codes().keySet().stream()
            .map(Pattern::quote)
            .collect(Collectors.joining("|", "(", ")"))
        : "(\\d{" + ((Digits) segment).count() + "})";
  }

  private String said(Nameplate.Segment segment, String code) {
    if (segment instanceof Coded coded) {
      return meaning(coded, coded.codes().get(code));
    }
    return segment instanceof Digits ? desk.say("Size") : "";
  }
}
