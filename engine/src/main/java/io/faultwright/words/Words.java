package io.faultwright.words;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of the tool in one language, looked up by their English text. What a language does not
 * have is said in English.
 */
public final class Words {
  public static final Words ENGLISH = new Words("en", new TreeMap<>());

  /** Languages that the tool knows besides English. */
  public static final List<String> LANGUAGES = List.of("de", "es");

  private static final Map<String, Words> KNOWN = new ConcurrentHashMap<>();
  private static final Pattern SLOT = Pattern.compile("\\{(\\d)}");
  private static final Pattern CALL = Pattern.compile("say\\(\"([^\"]+)\"");
  private static final Pattern POINT = Pattern.compile("(?<=\\d)\\.(?=\\d)");

  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  /** Up to a hundred minutes, minutes alone are read more easily. */
  private static final BigDecimal LONG = BigDecimal.valueOf(6000);

  private final String language;
  private final SortedMap<String, String> words;

  private Words(String language, SortedMap<String, String> words) {
    this.language = language;
    this.words = words;
  }

  /** The words for a language tag; {@code de-AT} has those of {@code de}. */
  public static Words of(String tag) {
    String language = Locale.forLanguageTag(tag).getLanguage();
    return LANGUAGES.contains(language)
        ? KNOWN.computeIfAbsent(language, known -> new Words(known, WordList.read(known)))
        : ENGLISH;
  }

  /** A text of the tool, in which {@code {0}} and the like stand for the parts. */
  public String say(String english, Object... parts) {
    return SLOT.matcher(words.getOrDefault(english, english))
        .replaceAll(
            slot ->
                Matcher.quoteReplacement(String.valueOf(parts[Integer.parseInt(slot.group(1))])));
  }

  /** Every word that differs from English, by the English text. */
  public SortedMap<String, String> all() {
    return new TreeMap<>(words);
  }

  /** Those for which a script calls {@code say} with the English text. */
  public SortedMap<String, String> calledFor(String script) {
    SortedMap<String, String> called = new TreeMap<>();
    CALL.matcher(script)
        .results()
        .map(call -> call.group(1))
        .filter(words::containsKey)
        .forEach(english -> called.put(english, words.get(english)));
    return called;
  }

  /** What parts the whole from the fraction of a number. */
  public String decimal() {
    return say("0.5").substring(1, 2);
  }

  /** A number with the decimal sign of the language. */
  public String figure(String number) {
    return POINT.matcher(number).replaceAll(Matcher.quoteReplacement(decimal()));
  }

  /**
   * A moment as a stopwatch shows it: {@code 1:28}, {@code 0:02.5}; with hours, {@code 6:01:28}.
   *
   * @param hours whether hours are shown; all moments of one course are shown alike
   */
  public String clock(BigDecimal seconds, boolean hours) {
    BigDecimal[] minutes = seconds.divideAndRemainder(SIXTY);
    BigDecimal[] parts = minutes[0].divideAndRemainder(SIXTY);
    String rest = ":" + twoDigits(minutes[1]);
    return hours
        ? parts[0].toBigInteger() + ":" + twoDigits(parts[1]) + rest
        : minutes[0].toBigInteger() + rest;
  }

  private String twoDigits(BigDecimal number) {
    BigDecimal plain = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
    return (plain.compareTo(BigDecimal.TEN) < 0 ? "0" : "") + figure(plain.toPlainString());
  }

  /** Whether moments up to an end are shown with hours. */
  public static boolean withHours(BigDecimal seconds) {
    return seconds.compareTo(LONG) > 0;
  }

  /** {@code a}, {@code a or b}, {@code a, b or c}. */
  public String or(List<String> some) {
    return rest(some)
        .map(rest -> say("{0} or {1}", rest, last(some)))
        .orElse(String.join("", some));
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  public String and(List<String> some) {
    return rest(some)
        .map(rest -> say("{0} and {1}", rest, last(some)))
        .orElse(String.join("", some));
  }

  /** {@code a or b or c}, for parts that may have commas of their own. */
  public String orEach(List<String> some) {
    return some.stream().reduce((one, other) -> say("{0} or {1}", one, other)).orElse("");
  }

  /** {@code a and b and c}, for parts that may have commas of their own. */
  public String andEach(List<String> some) {
    return some.stream().reduce((one, other) -> say("{0} and {1}", one, other)).orElse("");
  }

  private static Optional<String> rest(List<String> some) {
    return some.size() < 2
        ? Optional.empty()
        : Optional.of(String.join(", ", some.subList(0, some.size() - 1)));
  }

  private static String last(List<String> some) {
    return some.get(some.size() - 1);
  }

  /**
   * A title to stand within a line. A word in capitals, such as a model number, stays; so do all in
   * a language that writes nouns with a capital.
   */
  public String inLine(String title) {
    boolean word = title.length() > 1 && Character.isLowerCase(title.charAt(1));
    return word && !language.equals("de")
        ? title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1)
        : title;
  }

  /** A text to stand at the beginning of a line. */
  public static String upperFirst(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
