package org.belthigh.speed;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.belthigh.handout.Print;
import org.belthigh.plan.Plan;
import org.belthigh.words.Words;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The prints of a group of 14, the deflating of their bytes alone, and two other libraries. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Benchmark)
public class PageBenchmark {
  private Words words;
  private Plan plan;
  private List<byte[]> streams;
  private List<List<DrawnPage>> cards;
  private Peers peers;

  /** Plans the group and looks into what is printed of it. */
  @Setup
  public void plan() throws IOException {
    words = Stock.words();
    plan = Stock.plan(Stock.club(StageBenchmark.GROUP));
    streams = new ArrayList<>();
    Paper.documents(plan, words, Print.PACKET).forEach(d -> streams.addAll(Paper.inflated(d)));
    cards = new ArrayList<>();
    for (byte[] card : Paper.cards(plan, words)) {
      cards.add(DrawnPage.of(card));
    }
    peers = new Peers();
  }

  /** The packet: every sheet of the group, tagged, in one document. */
  @Benchmark
  public List<byte[]> packet() {
    return Paper.documents(plan, words, Print.PACKET);
  }

  /** The floor: the same bytes, deflated at the same level, and nothing drawn. */
  @Benchmark
  public long deflateAlone() {
    return Paper.deflated(streams);
  }

  /** Cards and home sheets, a document for each player. */
  @Benchmark
  public List<byte[]> cards() {
    return Paper.cards(plan, words);
  }

  /** A peer on the words of the same cards. */
  @Benchmark
  public int cardsByOpenPdf() {
    int bytes = 0;
    for (List<DrawnPage> card : cards) {
      bytes += peers.openPdf(card).length;
    }
    return bytes;
  }

  /** Another. */
  @Benchmark
  public int cardsByHtml() throws IOException {
    int bytes = 0;
    for (List<DrawnPage> card : cards) {
      bytes += peers.html(card).length;
    }
    return bytes;
  }
}
