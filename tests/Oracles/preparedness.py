"""Writes tests/Cases/solver/preparedness.csv: preparedness on match days of small seasons, worked out day by day.

Two running stores, fitness (42 days) and fatigue (7 days, counted twice), each kept by its recursion; a match's preparedness is
their difference before the day's own load, in per mille of what 100 points a week leave in the long run. The engine sums kernels.
Days are counted from the start of the first full week; a short first week lacks its first days.
"""
from math import exp

Q42, Q7 = exp(-1 / 42), exp(-1 / 7)
BEFORE = {"off": 15, "home": 35, "kept": 55}
NO_MATCH = [0.20, 0.18, 0.10, 0.20, 0.17, 0.15, 0.0]
STEADY = 100 / 7 * (Q42 / (1 - Q42) - 2 * Q7 / (1 - Q7))


def weight(day, matches):
    if day in matches:
        return 0.0
    ahead = [m - day for m in matches if m > day]
    behind = [day - m for m in matches if m < day]
    w = {1: 0.5, 2: 0.8, 3: 1.6, 4: 1.5}.get(min(ahead), 1.0) if ahead else 1.0
    if behind and min(behind) == 1:
        w = min(w, 0.35)
    if behind and min(behind) == 2:
        w = min(w, 0.6)
    return w


def run(start, cut, matches, training):
    """cut: days missing from the first week; matches: {day: points}; training: points a week."""
    loads = {}
    for week, points in enumerate(training):
        days = [d for d in range(7 * week, 7 * week + 7) if d >= cut]
        has = any(d in matches for d in range(7 * week, 7 * week + 7))
        shares = [weight(d, matches) if has else NO_MATCH[d - 7 * week] for d in days]
        if sum(shares) <= 0:
            shares = [1.0] * len(days)
        for d, s in zip(days, shares):
            loads[d] = loads.get(d, 0) + points * s / sum(shares)
    for d, points in matches.items():
        loads[d] = loads.get(d, 0) + points
    fitness = fatigue = 0.0
    found = {}
    for day in range(cut - 28, 7 * len(training)):
        if day in matches:
            found[day] = 1000 * (fitness - 2 * fatigue) / STEADY
        load = BEFORE[start] / 7 if day < cut else loads.get(day, 0)
        fitness, fatigue = (fitness + load) * Q42, (fatigue + load) * Q7
    return [found[d] for d in sorted(matches)]


CASES = [
    ("one match", "home", 0, [26], [40, 50, 60, 55]),
    ("weekly", "off", 0, [19, 26, 33], [40, 50, 60, 45, 45]),
    ("midweek", "kept", 0, [12, 15, 19, 22], [60, 60, 20, 15]),
    ("monday after sunday", "home", 0, [13, 14], [50, 40, 40]),
    ("short first week", "home", 4, [12, 19], [20, 50, 45]),
    ("every day of a week", "off", 0, [7, 8, 9, 10, 11, 12, 13], [50, 7, 30]),
    ("long", "kept", 0, [40, 54, 68, 75], [55, 60, 70, 75, 50, 45, 60, 45, 60, 45, 30]),
]

if __name__ == "__main__":
    print("# Written by tests/Oracles/preparedness.py. Matches load 10 points; training is a week's, without matches; expected in per mille.")
    print("case,start,cut,matches,training,expected")
    for name, start, cut, matches, training in CASES:
        expected = run(start, cut, {m: 10 for m in matches}, training)
        print(f"{name},{start},{cut},{' '.join(map(str, matches))},{' '.join(map(str, training))},{' '.join(f'{e:.6f}' for e in expected)}")
