package org.belthigh.sending;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.Event;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.plan.Day;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Item;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlayerPlan;
import org.belthigh.words.Words;

/**
 * Calendars of the planned weeks: one a group, with its practices and games, and one a player, with
 * the home sessions beside them. They hold no name, no hold and no note, for calendars are shared.
 * Times are those of the wall clock, without a zone. The same plan gives the same bytes.
 *
 * <p>Source: RFC 5545.
 */
public final class Calendars {
  private static final DateTimeFormatter DAY = DateTimeFormatter.BASIC_ISO_DATE;
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HHmmss");

  private final Plan plan;
  private final List<Event> events;
  private final Curriculum curriculum;
  private final Words words;

  /**
   * @param events the club's calendar
   * @param curriculum names the drills
   */
  public Calendars(Plan plan, List<Event> events, Curriculum curriculum, Words words) {
    this.plan = plan;
    this.events = List.copyOf(events);
    this.curriculum = curriculum;
    this.words = words;
  }

  /** One entry; all day where it has no start. */
  private record Entry(
      String uid,
      LocalDate date,
      Optional<LocalTime> start,
      int minutes,
      String summary,
      String description,
      String place) {}

  /** The files by their path: {@code u10/calendar.ics}, {@code u10/calendars/p01.ics}. */
  public Map<String, byte[]> files() {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (GroupPlan group : plan.groups()) {
      put(
          files,
          group.id() + "/calendar.ics",
          group.name(),
          events(group.id(), plan.language()),
          plan.language());
    }
    for (PlayerPlan player : plan.players()) {
      String language = player.who().language();
      List<Entry> entries = new ArrayList<>(events(player.who().group(), language));
      player.days().stream()
          .filter(day -> day.place() == Place.HOME && !day.items().isEmpty())
          .forEach(day -> entries.add(home(player.who().id(), day, language)));
      put(
          files,
          player.who().group() + "/calendars/" + player.who().id() + ".ics",
          player.who().id(),
          entries,
          language);
    }
    return files;
  }

  /** A calendar without an entry is none, by the standard. */
  private void put(
      Map<String, byte[]> files, String path, String name, List<Entry> entries, String language) {
    if (!entries.isEmpty()) {
      files.put(path, calendar(name, entries, language));
    }
  }

  private List<Entry> events(String group, String language) {
    LocalDate end = plan.from().plusWeeks(plan.weeks());
    List<Entry> entries = new ArrayList<>();
    Map<String, Integer> sameDay = new LinkedHashMap<>();
    for (Event event : events) {
      if (event.concerns(group)
          && !event.date().isBefore(plan.from())
          && event.date().isBefore(end)) {
        String key = group + "-" + event.kind().id() + "-" + event.date();
        int number = sameDay.merge(key, 1, Integer::sum);
        entries.add(
            new Entry(
                key + "-" + number,
                event.date(),
                event.start(),
                event.minutes(),
                words.say("send." + event.kind().id(), language),
                "",
                event.place()));
      }
    }
    assumed(group, entries.stream().map(Entry::date).collect(Collectors.toSet()))
        .forEach(
            date ->
                entries.add(
                    new Entry(
                        group + "-practice-" + date + "-0",
                        date,
                        Optional.empty(),
                        0,
                        words.say("send.practice", language),
                        "",
                        "")));
    return entries;
  }

  /** Practices that the plan assumes where the club's calendar has none. */
  private Set<LocalDate> assumed(String group, Set<LocalDate> known) {
    return plan.players().stream()
        .filter(player -> player.who().group().equals(group))
        .flatMap(player -> player.days().stream())
        .filter(day -> day.place() == Place.FIELD || day.place() == Place.CAGE)
        .filter(day -> !day.items().isEmpty())
        .map(Day::date)
        .filter(date -> !known.contains(date))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private Entry home(String player, Day day, String language) {
    List<String> lines = new ArrayList<>();
    for (Item item : day.items()) {
      Drill drill = curriculum.drills().get(item.drill());
      String name = drill == null ? item.drill() : drill.name().in(language);
      lines.add(
          words.say(
              Phrase.of("send.item", "drill", name, "reps", item.reps(), "minutes", item.minutes()),
              language));
    }
    return new Entry(
        player + "-home-" + day.date(),
        day.date(),
        Optional.empty(),
        0,
        words.say(Phrase.of("send.home", "minutes", day.minutes()), language),
        String.join("\n", lines),
        "");
  }

  private byte[] calendar(String name, List<Entry> entries, String language) {
    IcsText text =
        new IcsText()
            .line("BEGIN", "VCALENDAR")
            .line("VERSION", "2.0")
            .line("PRODID", "-//Belthigh//Belthigh//" + language.toUpperCase(Locale.ROOT))
            .line("CALSCALE", "GREGORIAN")
            .words("X-WR-CALNAME", name);
    entries.stream()
        .sorted(Comparator.comparing(Entry::date).thenComparing(Entry::uid))
        .forEach(entry -> write(entry, text));
    return text.line("END", "VCALENDAR").bytes();
  }

  private void write(Entry entry, IcsText text) {
    text.line("BEGIN", "VEVENT")
        .line("UID", entry.uid() + "@belthigh")
        .line("DTSTAMP", plan.from().format(DAY) + "T000000Z");
    if (entry.start().isPresent()) {
      text.line("DTSTART", entry.date().format(DAY) + "T" + entry.start().get().format(TIME));
      if (entry.minutes() > 0) {
        text.line("DURATION", "PT" + entry.minutes() + "M");
      }
    } else {
      text.line("DTSTART;VALUE=DATE", entry.date().format(DAY));
      text.line("TRANSP", "TRANSPARENT");
    }
    text.words("SUMMARY", entry.summary());
    if (!entry.description().isEmpty()) {
      text.words("DESCRIPTION", entry.description());
    }
    if (!entry.place().isEmpty()) {
      text.words("LOCATION", entry.place());
    }
    text.line("END", "VEVENT");
  }
}
