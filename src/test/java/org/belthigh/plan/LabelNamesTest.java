package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.TestClub;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Prints name a child by first name and number, and say no more of the last name than they must.
 */
class LabelNamesTest {
  @TempDir private Path temp;

  /** The names of children, each given as {@code first,last,number}. */
  private List<String> names(String... children) {
    Stream<String> rows =
        Stream.iterate(0, i -> i < children.length, i -> i + 1)
            .map(
                i -> {
                  String[] parts = children[i].split(",", -1);
                  return "p%02d,%s,%s,2017-05-%02d,R,%s,u10"
                      .formatted(i, parts[0], parts[1], i + 1, parts[2]);
                });
    ClubRecord record =
        TestClub.in(temp)
            .with(
                "roster.csv",
                Stream.concat(Stream.of("id,first_name,last_name,born,bats,number,group"), rows)
                    .toList())
            .read();
    LabelNames names = new LabelNames(record.players());
    return record.players().stream().map(names::of).toList();
  }

  @Test
  void a_first_name_of_one_stands_alone() {
    assertThat(names("Ana,Ortiz,7", "Ben,Ortiz,7")).containsExactly("Ana", "Ben");
  }

  @Test
  void the_initial_is_enough_where_numbers_differ() {
    assertThat(names("Ana,Ortiz,7", "Ana,Oakes,8")).containsExactly("Ana O.", "Ana O.");
  }

  @Test
  void more_letters_tell_apart_those_of_one_number_or_of_none() {
    assertThat(names("Ana,Ortiz,7", "Ana,Oakes,7")).containsExactly("Ana Or.", "Ana Oa.");
    assertThat(names("Ana,Ortiz,", "Ana,Oakes,")).containsExactly("Ana Or.", "Ana Oa.");
    assertThat(names("Ana,Ortiz,7", "Ana,Ortizo,7")).containsExactly("Ana Ortiz", "Ana Ortizo");
    assertThat(names("Ana,,7", "Ana,Ortiz,7")).containsExactly("Ana", "Ana O.");
  }

  @Test
  void the_id_tells_apart_those_of_one_name_and_number() {
    assertThat(names("José,Núñez,7", "jose,nunez,7", "José,Nuñera,7"))
        .containsExactly("José N. p00", "jose n. p01", "José Nuñer.");
    assertThat(names("Ana,,", "Ana,,")).containsExactly("Ana p00", "Ana p01");
  }

  @Test
  void a_number_in_a_name_is_no_shirt_number() {
    assertThat(names("Ana 7,,", "Ana,,7")).containsExactly("Ana 7 p00", "Ana p01");
  }
}
