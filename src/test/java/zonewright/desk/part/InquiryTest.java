package zonewright.desk.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What is found out away from the window's thread, and what of it is told. */
class InquiryTest {
  private final List<String> told = new ArrayList<>();
  private final CountDownLatch begun = new CountDownLatch(1);
  private final CountDownLatch done = new CountDownLatch(1);
  private final Inquiry inquiry = new Inquiry("inquiry of a test", 1, this::second);

  @AfterEach
  void close() throws InvocationTargetException, InterruptedException {
    SwingUtilities.invokeAndWait(inquiry::close);
  }

  private void second() {
    inquiry.ask(
        mine ->
            mine.tell(
                () -> {
                  told.add("second");
                  done.countDown();
                }));
  }

  private void first(Inquiry.Asked mine) {
    begun.countDown();
    while (!mine.dropped()) {
      Thread.onSpinWait();
    }
    mine.tell(() -> told.add("first"));
    throw new CancellationException();
  }

  @Test
  void onlyWhatWasAskedLastIsToldAndTheRestGivesUp() throws Exception {
    SwingUtilities.invokeAndWait(() -> inquiry.ask(this::first));
    begun.await();
    SwingUtilities.invokeAndWait(inquiry::soon);
    done.await();

    assertThat(told).containsExactly("second");
  }

  @Test
  void aFaultIsThatOfTheWindowsThread() throws Exception {
    AtomicReference<Throwable> fault = new AtomicReference<>();
    Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, thrown) -> {
          fault.set(thrown);
          done.countDown();
        });
    try {
      SwingUtilities.invokeAndWait(
          () ->
              inquiry.ask(
                  mine -> {
                    throw new IllegalStateException("a fault");
                  }));
      done.await();
    } finally {
      Thread.setDefaultUncaughtExceptionHandler(before);
    }

    assertThat(fault.get()).hasMessage("a fault");
  }
}
