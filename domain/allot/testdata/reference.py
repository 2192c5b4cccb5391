"""Answers of a general solver to the cases of cases.csv, made once.

    python3 reference.py < cases.csv > reference.csv

Made with SciPy 1.10.1 on Python 3.11: scipy.optimize.milp, which
calls HiGHS (branch and cut), relative gap 0; where every subject has one way
a supply and nothing limits minutes, linear_sum_assignment besides.

A case is drawn with the generator x -> x * 6364136223846793005 +
1442695040888963407 mod 2**64, from x = seed; a number below n is (x >> 33) % n
of the next x. For each supply in turn: below 2 * most + 1, how many there are.
For each subject in turn: way 0 (worth 0), then each other way: worth (below
fine) + 1, the supply (below supplies + 1; 0 is none), minutes (below 12) + 1.
For each union in turn: subject a below the subjects, b = a + 1 + below 4
modulo the subjects, worth (below 2 * fine) + 1, no supply, minutes (below 12)
+ 1. A copy > 1 repeats the ways of every subject so many times in a row, so
that many subjects are alike.
"""

import csv
import sys

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, linear_sum_assignment, milp
from scipy.sparse import coo_array


class Draw:
    def __init__(self, seed):
        self.x = seed

    def below(self, n):
        self.x = (self.x * 6364136223846793005 + 1442695040888963407) % 2**64
        return (self.x >> 33) % n


def case(c):
    d = Draw(c["seed"])
    supply = [d.below(2 * c["most"] + 1) for _ in range(c["supplies"])]
    ways = []
    for i in range(c["subjects"]):
        if i % c["copy"] > 0:
            ways.append(ways[-1])
            continue
        ways.append([(0, 0, 0)])
        for _ in range(1, c["ways"]):
            ways[-1].append((d.below(c["fine"]) + 1, d.below(c["supplies"] + 1), d.below(12) + 1))
    unions = []
    for _ in range(c["unions"]):
        a = d.below(c["subjects"])
        b = (a + 1 + d.below(4)) % c["subjects"]
        unions.append((a, b, d.below(2 * c["fine"]) + 1, d.below(12) + 1))
    return supply, ways, unions


def solve(c):
    supply, ways, unions = case(c)
    n = len(ways)
    worth, rows, cols, vals = [], [], [], []

    def column(subjects, w, take, minutes):
        j = len(worth)
        worth.append(w)
        entries = [(i, 1) for i in subjects]
        if take > 0:
            entries.append((n + take - 1, 1))
        if c["minutes"] > 0:
            entries.append((n + len(supply), minutes))
        for r, v in entries:
            rows.append(r), cols.append(j), vals.append(v)

    for i, ws in enumerate(ways):
        for w, take, minutes in ws[1:]:
            column([i], w, take, minutes)
    for a, b, w, minutes in unions:
        column([a, b], w, 0, minutes)
    limit = [1] * n + supply + ([c["minutes"]] if c["minutes"] > 0 else [])
    a = coo_array((vals, (rows, cols)), shape=(len(limit), len(worth)))
    r = milp(-np.array(worth), integrality=np.ones(len(worth)), bounds=Bounds(0, 1),
             constraints=LinearConstraint(a, -np.inf, limit),
             options={"mip_rel_gap": 0, "time_limit": 300})
    best, bound = round(-r.fun), -r.mip_dual_bound
    if c["minutes"] == 0 and not unions and sum(supply) * n < 4_000_000:
        assert best == assigned(supply, ways), c
    return best, ("best" if r.status == 0 else f"at most {bound:.3f}")


def assigned(supply, ways):
    """The same as an assignment: a column a piece of supply, one a subject for what takes none."""
    first = np.cumsum([0] + supply)
    gain = np.zeros((len(ways), first[-1] + len(ways)))
    for i, ws in enumerate(ways):
        for w, take, _ in ws:
            to = slice(first[take - 1], first[take]) if take else first[-1] + i
            gain[i, to] = np.maximum(gain[i, to], w)
    r, k = linear_sum_assignment(gain, maximize=True)
    return round(gain[r, k].sum())


cases = list(csv.DictReader(line for line in sys.stdin if not line.startswith("#")))
print("# made by reference.py, which says how")
print("name,worth,proven")
for row in cases:
    c = {k: v if k == "name" else int(v) for k, v in row.items()}
    print(c["name"], *solve(c), sep=",", flush=True)
