package lungfish.roomfile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;

/**
 * Replaces a file whole or not at all:
 *
 * <ol>
 *   <li>follow links, so that the file is replaced and not the link to it;
 *   <li>make a fresh file beside it;
 *   <li>give it the rights of the old one;
 *   <li>write, and wait for the disk;
 *   <li>put it in the place of the old one in one step;
 *   <li>wait for the folder.
 * </ol>
 *
 * Where one of the steps up to 5 fails, the fresh file is thrown away and the old one is untouched. Step 6 is not
 * possible on every system; where it fails the new file is there, only not yet certain to survive a power cut.
 */
public final class AtomicSave {
    private final Disk disk;

    AtomicSave(Disk disk) {
        this.disk = disk;
    }

    /** Saves to the disks of this machine. */
    public static AtomicSave onThisDisk() {
        return new AtomicSave(Disk.REAL);
    }

    /** The same without waiting for the disk, a hundred times faster: whole or not at all if the program is cut off, but not if the power is. */
    public static AtomicSave hasty() {
        return new AtomicSave(Disk.HASTY);
    }

    /** Replaces what the file holds; makes it where there is none. */
    public void save(Path file, byte[] bytes) throws IOException {
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path folder = folderOf(target);
        Path fresh = disk.fresh(folder, String.valueOf(target.getFileName()));
        try {
            takeRights(target, fresh);
            disk.write(fresh, bytes);
            disk.replace(fresh, target);
        } catch (IOException | RuntimeException e) {
            discard(fresh, e);
            throw e;
        }
        settle(folder);
    }

    private static void takeRights(Path from, Path to) throws IOException {
        PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        PosixFileAttributeView fresh = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (old != null && fresh != null && Files.exists(from)) {
            fresh.setPermissions(old.readAttributes().permissions());
        }
    }

    private void discard(Path fresh, Exception because) {
        try {
            disk.discard(fresh);
        } catch (IOException e) {
            because.addSuppressed(e);
        }
    }

    private void settle(Path folder) {
        try {
            disk.settle(folder);
        } catch (IOException e) {
            // the new file is in place; this system only cannot say when it will outlive a power cut
        }
    }

    private static Path folderOf(Path target) throws IOException {
        Path folder = target.getParent();
        if (folder == null) {
            throw new IOException(target + " is no file");
        }
        return folder;
    }
}
