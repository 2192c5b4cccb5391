"""Small assignments with their least and most total, made once.

    python3 assignments.py > assignments.csv

The figures are drawn here with the generator x -> x * 6364136223846793005 +
1442695040888963407 mod 2**64 from x = 2027; a number below n is (x >> 33) % n of
the next x. Least and most are those of scipy.optimize.linear_sum_assignment
(SciPy 1.10.1) and of trying all permutations, which also counts the answers.
"""

from itertools import permutations

import numpy as np
from scipy.optimize import linear_sum_assignment

x = 2027


def below(n):
    global x
    x = (x * 6364136223846793005 + 1442695040888963407) % 2**64
    return (x >> 33) % n


print("# made by assignments.py, which says how")
print("name,rows,least,columns,answers,most")
for size, figures in [(2, 9), (3, 9), (3, 40), (4, 9), (4, 100), (4, 100), (5, 6), (5, 100), (6, 12), (6, 1000)]:
    cost = np.array([[below(figures) + 1 for _ in range(size)] for _ in range(size)])
    total = {p: sum(cost[i, p[i]] for i in range(size)) for p in permutations(range(size))}
    least, most = min(total.values()), max(total.values())
    for want, maximize in (least, False), (most, True):
        rows, columns = linear_sum_assignment(cost, maximize=maximize)
        assert cost[rows, columns].sum() == want
    best = [p for p in total if total[p] == least]
    print(
        f"{size} of figures up to {figures}",
        ";".join(" ".join(map(str, row)) for row in cost),
        least, " ".join(map(str, best[0])), len(best), most, sep=",",
    )
