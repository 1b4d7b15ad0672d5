package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.swing.JComboBox;

/** One of a list of things that have names; typing a letter leads to the next that begins with it. */
final class Choice<T> extends JComboBox<Choice.Named<T>> {
    private static final int ROWS = 16;

    /** A thing, and what it is called. */
    record Named<T>(String name, T thing) {
        @Override
        public String toString() {
            return name;
        }
    }

    private transient Optional<T> usual = Optional.empty();

    Choice(String says) {
        getAccessibleContext().setAccessibleName(says);
        setName(says);
        setMaximumRowCount(ROWS);
    }

    /**
     * Offers these. What the keeper has chosen stays, if it is among them; else the first that is liked is chosen, so that
     * what was liked among others does not stay.
     */
    void offer(List<T> things, Function<T, String> name, Predicate<T> liked) {
        Optional<T> own = chosen().filter(each -> !usual.equals(Optional.of(each)));
        removeAllItems();
        things.forEach(each -> addItem(new Named<>(name.apply(each), each)));
        choose(liked);
        usual = chosen();
        own.ifPresent(kept -> choose(kept::equals));
    }

    /** The first of these, where there is one. */
    void choose(Predicate<T> wanted) {
        for (int i = 0; i < getItemCount(); i++) {
            if (wanted.test(getItemAt(i).thing())) {
                setSelectedIndex(i);
                return;
            }
        }
    }

    Optional<T> chosen() {
        int at = getSelectedIndex();
        return at < 0 ? Optional.empty() : Optional.of(getItemAt(at).thing());
    }
}
