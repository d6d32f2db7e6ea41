package trammel.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LedgerPlaceTest {
  @TempDir Path folder;
  private Path jobs;

  @BeforeEach
  void aFolderOfJobs() throws IOException {
    jobs = Files.createDirectories(folder.resolve("jobs"));
  }

  @Test
  void theLedgerIsBesideTheJobs() throws IOException {
    LedgerPlace place = LedgerPlace.in(jobs);
    assertEquals(jobs.toRealPath().resolve("ledger.sqlite"), place.file());
    assertFalse(place.exists());
    assertTrue(place.warning().isEmpty(), () -> place.warning().get());
  }

  /** The file that the link points to is written, its journal beside it, and the link stays. */
  @Test
  void aLinkIsWrittenWhereItPoints() throws IOException {
    Path real = Files.createDirectories(folder.resolve("disk")).resolve("shop.sqlite");
    Ledger.open(real).close();
    Path link = Files.createSymbolicLink(jobs.resolve("ledger.sqlite"), real);
    try (Ledger ledger = Ledger.open(LedgerPlace.in(jobs).file())) {
      ledger.closedJobs().close(Samples.job("A"));
    }
    assertTrue(Files.isSymbolicLink(link));
    try (Ledger ledger = Ledger.openExisting(real)) {
      assertEquals(List.of(Samples.job("A")), ledger.closedJobs().all());
    }
  }

  @Test
  void aLinkToNothingIsSaidNotPassedOver() throws IOException {
    Files.createSymbolicLink(jobs.resolve("ledger.sqlite"), folder.resolve("gone.sqlite"));
    String told =
        assertThrows(IllegalArgumentException.class, () -> LedgerPlace.in(jobs)).getMessage();
    assertTrue(told.contains("gone.sqlite"), told);
  }

  @Test
  void aFolderThatIsCopiedToOtherMachinesIsWarnedOf() throws IOException {
    Files.createFile(folder.resolve(".sync-state"));
    String told = LedgerPlace.in(jobs).warning().orElse("");
    assertTrue(told.contains(".sync-state"), told);
  }

  /** Types as /proc/mounts names them; from memory. */
  @Test
  void disksOfOtherMachinesAreKnownByTheirType() {
    for (String type : List.of("nfs", "nfs4", "cifs", "smb3", "fuse.sshfs", "9p", "fuse.davfs")) {
      assertTrue(LedgerPlace.isRemote(type), type);
    }
    for (String type : List.of("ext4", "xfs", "btrfs", "apfs", "NTFS", "tmpfs", "fuseblk")) {
      assertFalse(LedgerPlace.isRemote(type), type);
    }
  }
}
