"""Where the labels go: nothing here needs a screen."""

import random
from itertools import combinations

import pytest

from freecad_neckfit.gui.annotations.boxes import Box, Page, Wanted
from freecad_neckfit.gui.annotations.layout import attach, spread, stack


def page(**changes):
    return Page(1300, 700, 10, 6, 70, **changes)


def cluster(rng, count):
    return [
        Wanted(rng.gauss(650, 80), rng.gauss(350, 60), rng.randint(160, 300), rng.randint(48, 80))
        for _ in range(count)
    ]


@pytest.mark.parametrize("seed", range(60))
def test_labels_cover_neither_one_another_nor_what_stands_already(seed):
    rng = random.Random(seed)
    taken = (Box(10, 620, 420, 70), Box(10, 300, 290, 310), Box(10, 10, 240, 160))
    band = rng.choice([None, (320, 400), (0, 700)])
    boxes = spread(cluster(rng, rng.randint(1, 30)), page(taken=taken, band=band))
    standing = [box for box in boxes if box is not None]
    assert standing
    for one, other in combinations([*standing, *taken], 2):
        assert not one.overlaps(other)
    for box in standing:
        assert box.x >= 10
        assert box.right <= 1290
        assert box.y >= 10 - 1e-9
        assert box.top <= 690 + 1e-9


@pytest.mark.parametrize("seed", range(20))
def test_the_usual_number_of_labels_finds_room_beside_the_joint(seed):
    labels = cluster(random.Random(seed), 11)
    boxes = spread(labels, page())
    assert None not in boxes
    low, high = min(w.x for w in labels), max(w.x for w in labels)
    if low > 400 and high < 900:
        assert all(box.right <= low or box.x >= high for box in boxes)


def test_where_room_lacks_the_last_labels_give_way():
    boxes = spread([Wanted(650, 350, 280, 70) for _ in range(100)], page())
    kept = sum(box is not None for box in boxes)
    assert 10 <= kept < 100
    assert None not in boxes[:kept]


def test_no_label_at_all_where_none_has_room():
    assert spread([Wanted(20, 20, 280, 70)], Page(40, 40, 10, 6, 70)) == [None]


def test_a_flat_model_is_kept_clear():
    boxes = spread([Wanted(600 + i, 350, 200, 60) for i in range(10)], page(band=(330, 370)))
    above = sum(box.y >= 370 for box in boxes)
    below = sum(box.top <= 330 for box in boxes)
    assert (above + below, above >= 3, below >= 3) == (10, True, True)


@pytest.mark.parametrize(
    ("wished", "found"),
    [
        ([100, 40], [100, 40]),
        ([50, 50], [63, 37]),
        ([0, 0], [26, 0]),
        ([190, 190], [180, 154]),
        ([60, 60, 60], [86, 60, 34]),
    ],
)
def test_a_stack_moves_its_boxes_as_little_as_it_must(wished, found):
    assert stack(wished, [20] * len(wished), 0, 200, 6) == pytest.approx(found)


def test_a_leader_leaves_on_the_side_of_its_point():
    box = Box(100, 100, 50, 40)
    assert attach(box, 300, 120) == (150, 120)
    assert attach(box, 0, 500) == (100, 130)
    assert attach(box, 120, 10) == (120, 100)


def test_a_label_without_a_column_takes_a_place_over_or_under_the_model():
    """Both sides are full; between them there is room only above and below."""
    sides = (Box(10, 10, 300, 680), Box(990, 10, 300, 680))
    crowded = page(taken=sides, middle=(320, 980), band=(150, 550))
    boxes = spread([Wanted(650, 500, 280, 70), Wanted(650, 200, 280, 70)], crowded)
    assert [box is not None for box in boxes] == [True, True]
    assert boxes[0].y >= 550 + crowded.spacing - 1e-5
    assert boxes[1].top <= 150 - crowded.spacing + 1e-5
