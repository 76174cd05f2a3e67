package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever happens to a file, reading ends with a record or with reasons, never otherwise. */
class MutilatedFilesTest {
  private static final long SEED = 20270308L;
  private static final int ROUNDS = 150;
  private static final String STUFF = "\"\",,;\n\r\t:-{}[]&*#!%@|>'0 9é\u0000\uFEFF";

  @ParameterizedTest
  @ValueSource(strings = {"club.yaml", "roster.csv", "calendar.csv", "logs/a.csv", "throws.csv"})
  void reading_never_breaks_down(String name, @TempDir Path temp) throws IOException {
    TestClub club =
        TestClub.in(temp)
            .with("calendar.csv", "date,group,kind,start", "2027-03-08,u10,practice,17:30")
            .with("throws.csv", "date,player,pitches,innings", "2027-03-08,p01,45,3.2")
            .with("logs/a.csv", TestClub.TOSSES, "2027-03-08,p01,zone-call,1,1,,5,\"5\",no,");
    Path file = club.folder().resolve(name);
    String whole = Files.readString(file);
    Random random = new Random(SEED);
    for (int round = 0; round < ROUNDS; round++) {
      String mutilated = mutilated(whole, random);
      Files.write(file, mutilated.getBytes(StandardCharsets.UTF_8));
      assertThat(problems(club)).as("seed %s round %s: %s", SEED, round, mutilated).isNotNull();
    }
  }

  private static List<Problem> problems(TestClub club) {
    try {
      return Intake.read(club.folder(), TestCatalogue.small()).problems();
    } catch (Unusable e) {
      assertThat(e.problems()).isNotEmpty();
      return e.problems();
    }
  }

  private static String mutilated(String text, Random random) {
    StringBuilder result = new StringBuilder(text);
    for (int i = 0; i <= random.nextInt(4); i++) {
      int at = random.nextInt(result.length());
      char stuff = STUFF.charAt(random.nextInt(STUFF.length()));
      switch (random.nextInt(4)) {
        case 0 -> result.insert(at, stuff);
        case 1 -> result.setCharAt(at, stuff);
        case 2 -> result.deleteCharAt(at);
        default -> result.setLength(Math.max(1, at));
      }
    }
    return result.toString();
  }
}
