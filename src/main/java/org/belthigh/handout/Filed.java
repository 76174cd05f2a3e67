package org.belthigh.handout;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Where a document belongs and what it is.
 *
 * @param path relative to the output folder, with forward slashes
 * @param sheet the print's id, such as {@code card}; {@code tosses} for the lists of a practice
 * @param group id
 * @param player id; empty where it is not about one
 * @param date of the practice, or first day of the card; empty where it is not about one
 */
public record Filed(
    String path, String sheet, String group, Optional<String> player, Optional<LocalDate> date) {}
