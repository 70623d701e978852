package io.faultwright.resolve;

/** The kinds of thing that have an id. */
enum Kind {
  FAMILY("family"),
  OPTION("option"),
  MODEL("model"),
  REFRIGERANT("refrigerant"),
  CAUTION("caution"),
  PART("part"),
  SET_UP("set-up"),
  READING("reading"),
  LIMITS("limits table"),
  FAULT("fault"),
  SYMPTOM("symptom"),
  NEVER("never"),
  CASE("case"),
  RULE("rule"),
  CHART("chart"),
  STEP("step"),
  GUIDE("guide"),
  SEQUENCE("sequence"),
  SESSION("session"),
  ITEM("item"),
  SYNONYM("synonym"),
  TRANSLATION("translation");

  private final String noun;

  Kind(String noun) {
    this.noun = noun;
  }

  /** The word with its article. */
  String one() {
    return (this == OPTION || this == ITEM ? "an " : "a ") + noun;
  }

  /** The word used in messages. */
  String noun() {
    return noun;
  }
}
