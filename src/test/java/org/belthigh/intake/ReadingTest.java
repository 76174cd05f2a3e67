package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.belthigh.model.Call;
import org.belthigh.model.Field;
import org.belthigh.model.Hit;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What spreadsheets leave behind is read, and said once a file. */
class ReadingTest {
  private static final LocalDate DAY = LocalDate.of(2027, 3, 8);

  private TestClub club;

  @BeforeEach
  void club(@TempDir Path temp) {
    club = TestClub.in(temp);
  }

  private void bytes(String name, String text, Charset charset) {
    try {
      club.with(name, "");
      Files.write(club.folder().resolve(name), text.getBytes(charset));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private String remark() {
    List<String> messages = club.messages();
    assertThat(messages).hasSize(1);
    assertThat(messages.get(0)).startsWith("warning CLUB/");
    return messages.get(0).substring("warning CLUB/".length()).split(";", 2)[0];
  }

  @Test
  void a_plain_file_is_read_without_a_word() {
    bytes(
        "throws.csv", "\uFEFFdate,player,pitches\r\n2027-03-08,p01,20\r\n", StandardCharsets.UTF_8);

    assertThat(club.messages()).isEmpty();
    assertThat(club.read().outings()).hasSize(1);
  }

  @Test
  void a_spreadsheet_of_another_country_is_read_and_said_once() {
    bytes(
        "other.csv",
        "Fecha;Jugadora;Horas;Qué\r\n8/3/2027;p01;1,5;fútbol\r\n13/3/2027;p02;2;natación\r\n",
        Charset.forName("windows-1252"));

    assertThat(club.read().otherSports())
        .extracting(o -> o.date() + " " + o.hours() + " " + o.what())
        .containsExactly("2027-03-08 1.5 fútbol", "2027-03-13 2.0 natación");
    assertThat(remark())
        .isEqualTo(
            "other.csv: it is read as windows-1252 text, with semicolons between the cells, with"
                + " headings such as fecha for date and jugadora for player and horas for hours and"
                + " qué for what, with the day first, 8/3/2027 for 2027-03-08 and 13/3/2027 for"
                + " 2027-03-13, with decimal commas, 1,5 for 1.5");
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16LE", "UTF-16BE"})
  void unicode_text_with_its_mark_is_read(String charset) {
    bytes("other.csv", "\uFEFFdate\tplayer\thours\n2027-03-08\tp01\t2\n", Charset.forName(charset));

    assertThat(club.read().otherSports()).hasSize(1);
    assertThat(remark()).contains("as " + charset + " text, with tabs between the cells");
  }

  @Test
  void a_first_line_may_name_the_separator() {
    club.with("other.csv", "sep=;", "date;player;hours;what", "2027-03-08;p01;2;a, b and c");

    assertThat(club.read().otherSports().get(0).what()).isEqualTo("a, b and c");
    assertThat(club.read().otherSports().get(0).origin().line()).isEqualTo(3);
  }

  @Test
  void blanks_of_web_pages_around_a_cell_are_no_part_of_it() {
    club.with("other.csv", "date,player,hours", "2027-03-08,\u00A0p01\u200B,2");

    assertThat(club.read().otherSports().get(0).player()).isEqualTo("p01");
    assertThat(club.messages()).isEmpty();
  }

  @Test
  void headings_that_come_again_blank_lines_and_sums_are_no_rows() {
    club.with(
        "throws.csv",
        "date,player,pitches",
        "2027-03-08,p01,20",
        ",,",
        "Date,Player,Pitches",
        "2027-03-12,p01,30",
        "Total,,50",
        "average,,25");

    assertThat(club.read().outings()).extracting(Outing::pitches).containsExactly(20, 30);
    assertThat(club.read().unread()).isEmpty();
    assertThat(remark())
        .isEqualTo(
            "throws.csv: it is read without 1 repeated heading, without the sums on line 6 and 7");
  }

  @Test
  void a_sum_without_a_word_is_known_by_its_number() {
    club.with(
        "throws.csv", "date,player,pitches", "2027-03-08,p01,20", "2027-03-12,p01,30", ",,50");

    assertThat(club.read().outings()).hasSize(2);
    assertThat(club.read().unread()).isEmpty();
  }

  @Test
  void a_last_row_that_is_no_sum_stays_an_unread_report() {
    club.with(
        "throws.csv", "date,player,pitches", "2027-03-08,p01,20", "2027-03-12,p01,30", ",,51");

    assertThat(club.read().unread()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3/8/2027 | 3/25/2027",
        "8/3/2027 | 25/3/2027",
        "08.03.27 | 25.03.27",
        "8-Mar-27 | 25-Mar-27",
        "March 8, 2027 | March 25, 2027",
        "8 de marzo de 2027 | 25 de marzo de 2027",
        "2027/3/8 | 2027/3/25",
        "2027-03-08 00:00:00 | 2027-03-25 00:00:00"
      })
  void days_are_read_by_what_the_whole_file_shows(String first, String second) {
    club.with("other.csv", "date;player;hours", first + ";p01;1", second + ";p01;1");

    assertThat(club.read().otherSports())
        .extracting(OtherSport::date)
        .containsExactly(DAY, LocalDate.of(2027, 3, 25));
    assertThat(remark()).contains(first + " for 2027-03-08");
  }

  @Test
  void days_that_cannot_be_told_are_asked_once_and_leave_arms_unsure() {
    club.with(
        "throws.csv",
        "date,player,pitches",
        "3/8/2027,p01,20",
        "3/9/2027,p02,20",
        "3/3/2027,p02,1");

    assertThat(club.read().outings()).hasSize(1);
    assertThat(club.read().unread()).hasSize(2).allMatch(u -> u.date().isEmpty());
    assertThat(club.messages().get(1))
        .isEqualTo(
            "fault CLUB/throws.csv line 2 column 1, date: '3/8/2027' can mean 2027-03-08 or"
                + " 2027-08-03, so 2 rows cannot be used; a date of the file with a day over 12, or"
                + " dates: in club.yaml, must tell which comes first; until then ask before the"
                + " player throws.\n"
                + "Add a line to club.yaml: dates: month-first, or dates: day-first if the day comes"
                + " first.");
  }

  @Test
  void the_club_can_answer_which_comes_first() {
    club.with("throws.csv", "date,player,pitches", "4/5/2027,p01,20");
    club.with("club.yaml", append(TestClub.CLUB, "dates: month-first"));
    assertThat(club.read().outings())
        .extracting(Outing::date)
        .containsExactly(LocalDate.of(2027, 4, 5));

    club.with("club.yaml", append(TestClub.CLUB, "dates: day-first"));
    assertThat(club.read().outings())
        .extracting(Outing::date)
        .containsExactly(LocalDate.of(2027, 5, 4));
  }

  @Test
  void what_the_club_said_is_not_asked_again() {
    club.with("throws.csv", "date,player,pitches", "4/5/2027,p01,20");
    club.with("club.yaml", append(TestClub.CLUB, "dates: month-first"));
    assertThat(club.messages()).isEmpty();

    club.with("throws.csv", "date,player,pitches", "4/5/2027,p01,20", "25/3/2027,p01,20");
    assertThat(club.messages())
        .singleElement()
        .asString()
        .contains("it is read with the day first, 4/5/2027 for 2027-05-04");
  }

  @Test
  void what_a_file_shows_wins_over_what_the_club_says() {
    club.with("club.yaml", append(TestClub.CLUB, "dates: day-first"));
    club.with("throws.csv", "date,player,pitches", "3/8/2027,p01,20", "3/25/2027,p01,20");

    assertThat(club.read().outings().get(0).date()).isEqualTo(DAY);
  }

  private static List<String> append(List<String> lines, String line) {
    return java.util.stream.Stream.concat(lines.stream(), java.util.stream.Stream.of(line))
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "yes,true",
    "Y,true",
    "x,true",
    "1,true",
    "TRUE,true",
    "sí,true",
    "Si,true",
    "✓,true",
    "no,false",
    "N,false",
    "0,false",
    "false,false"
  })
  void yes_and_no_are_read_in_every_usual_spelling(String text, boolean meant) {
    club.with(
        "roster.csv", "id,first_name,born,bats,group,pitches", "p01,Ana,2017-05-02,R,u10," + text);

    assertThat(club.read().players().get(0).pitches()).isEqualTo(meant);
  }

  @ParameterizedTest
  @CsvSource({
    "5:30 PM,17:30",
    "5:30pm,17:30",
    "12:15 a.m.,00:15",
    "12:00 p. m.,12:00",
    "17.30,17:30",
    "17h30,17:30"
  })
  void times_are_read_as_people_write_them(String text, String meant) {
    club.with("calendar.csv", "date,group,kind,start", "2027-03-08,u10,practice," + text);

    assertThat(club.read().events().get(0).start()).contains(LocalTime.parse(meant));
  }

  @Test
  void a_spanish_log_is_read_word_by_word() {
    club.with(
        "logs/a.csv",
        "fecha,jugador,ejercicio,zona,dijo,campo,swing,contacto,fue,pelota",
        "2027-03-08,p01,field-call,\"baja, adentro\",alta afuera,entre izquierdo y central,sí,duro,"
            + "derecho,pelota de tenis");

    Toss toss = club.read().tosses().get(0);

    assertThat(toss.zone()).isEqualTo(Spot.LOW_IN);
    assertThat(toss.called()).contains(new Call.AtSpot(Spot.HIGH_AWAY));
    assertThat(toss.field()).contains(Field.LEFT_CENTER);
    assertThat(toss.hit()).contains(Hit.HARD);
    assertThat(remark()).contains("with words such as baja, adentro for low-in");
  }

  @Test
  void words_of_a_spanish_roster_and_calendar_are_read() {
    club.with(
        "roster.csv",
        "clave,nombre,nacimiento,batea,grupo,días en casa,idioma",
        "p01,Ana,2017-05-02,zurda,u10,lun mié dom,español");
    club.with("calendar.csv", "fecha,grupo,tipo", "2027-03-08,todos,práctica");

    Player ana = club.read().players().get(0);

    assertThat(ana.homeDays()).hasSize(3);
    assertThat(ana.language()).isEqualTo("es");
    assertThat(ana.bats().letter()).isEqualTo("L");
    assertThat(club.read().events().get(0).group()).isEqualTo(Optional.empty());
    assertThat(club.read().problems()).noneMatch(p -> p.isFault()).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource({
    "D,R",
    "derecho,R",
    "Diestra,R",
    "a la derecha,R",
    "Z,L",
    "zurdo,L",
    "I,L",
    "lado izquierdo,L",
    "A,S",
    "ambos,S",
    "ambos lados,S",
    "ambidiestra,S",
    "B,S"
  })
  void sides_are_read_in_spanish(String text, String letter) {
    club.with(
        "roster.csv",
        "id,first_name,born,bats,throws,group",
        "p01,Ana,2017-05-02," + text + ",Z,u10");

    Player ana = club.read().player("p01");

    assertThat(ana.bats().letter()).isEqualTo(letter);
    assertThat(ana.throwsWith()).contains(Side.LEFT);
  }

  @ParameterizedTest
  @ValueSource(strings = {"D/Z", "D o Z", "C", "a la"})
  void a_side_that_is_none_is_refused(String text) {
    club.with("roster.csv", "id,first_name,born,bats,group", "p09,Ana,2017-05-02," + text + ",u10");

    assertThat(club.messages())
        .anyMatch(m -> m.contains("bats: '" + text + "' is not known; bats must be"));
  }

  @Test
  void a_known_column_is_never_replaced_by_another_word_for_it() {
    club.with("other.csv", "date,fecha,player,hours", "2027-03-08,2027-04-01,p01,1");

    assertThat(club.read().otherSports().get(0).date()).isEqualTo(DAY);
    assertThat(club.messages().get(0)).contains("fecha: the column is not known");
  }

  @ParameterizedTest
  @CsvSource({"'1,000',Maybe a digit was mistyped.", "18 ft,Maybe 18.", "l8,Maybe 18."})
  void a_slip_in_a_number_is_proposed_and_not_corrected(String feet, String maybe) {
    club.with(
        "logs/a.csv", "date;player;drill;zone;swing;feet", "2027-03-08;p01;zone-call;5;no;" + feet);

    assertThat(club.read().tosses()).isEmpty();
    assertThat(club.messages().get(1)).endsWith(maybe);
  }

  @Test
  void a_spreadsheets_own_day_number_is_proposed() {
    club.with("throws.csv", "date,player,pitches", "46454,p01,20");

    assertThat(club.messages().get(0)).endsWith("Maybe 2027-03-08, a spreadsheet's own number.");
  }
}
