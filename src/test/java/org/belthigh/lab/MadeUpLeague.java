package org.belthigh.lab;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.SplittableRandom;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;

/**
 * A league of any size in which nobody is real: a folder of club folders, each with groups of about
 * fourteen children and five weeks of practices, games, pitching and reports behind them. For
 * trying how long a run takes, and how much memory.
 *
 * <p>Told by its seed alone. One club after the other is written, so that a large league takes no
 * more memory than a small one:
 *
 * <pre>java -cp target/test-classes:target/belthigh.jar org.belthigh.lab.MadeUpLeague 2000 DIR
 * </pre>
 */
public final class MadeUpLeague {
  /** The first day that is to be planned: what is written down ends before it. */
  public static final LocalDate PLAN_DAY = LocalDate.of(2027, 4, 5);

  /** The seed where none is said. */
  public static final long USUAL_SEED = 20270405L;

  private static final int CLUB = 300;

  private MadeUpLeague() {}

  /** Arguments: how many players, an empty folder, and a seed if another than the usual one. */
  public static void main(String[] args) throws IOException {
    if (args.length < 2) {
      throw new IllegalArgumentException("Say how many players, and the folder to write to");
    }
    long seed = args.length > 2 ? Long.parseLong(args[2]) : USUAL_SEED;
    write(Path.of(args[1]), Integer.parseInt(args[0]), seed, CatalogueLoader.load().orThrow());
  }

  /**
   * Writes {@code players} players in clubs of at most 300, of about equal size.
   *
   * @param folder where there is nothing yet
   * @param players 1 or more
   */
  public static void write(Path folder, int players, long seed, Catalogue catalogue)
      throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    int clubs = (players + CLUB - 1) / CLUB;
    for (int i = 0; i < clubs; i++) {
      int size = share(players, clubs, i);
      String name = String.format(Locale.ROOT, "club-%03d", i + 1);
      Path club = Files.createDirectories(folder.resolve(name));
      new MadeUpClub(name, size, random.split(), catalogue).write(club);
    }
  }

  /** How many of {@code all} the part {@code at} of {@code parts} about equal ones gets. */
  static int share(int all, int parts, int at) {
    return all / parts + (at < all % parts ? 1 : 0);
  }
}
