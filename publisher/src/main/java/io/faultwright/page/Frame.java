package io.faultwright.page;

import java.util.Optional;

/**
 * Head and foot of a page.
 *
 * @param language BCP 47 tag of the texts
 * @param direction {@code ltr} or {@code rtl}
 * @param handbook title of the whole
 * @param maker of the equipment
 * @param edition revision and date in words
 * @param disclaimer what the handbook defers to
 * @param hotline whom to call
 * @param draft whether it may not be worked by yet
 */
public record Frame(
    String language,
    String direction,
    String handbook,
    String maker,
    String edition,
    String disclaimer,
    Optional<String> hotline,
    boolean draft) {}
