#!/usr/bin/python3
"""Counts what matches alone force, in every club's season of a fixture list, apart from the program and by other means.

match-rules.py ZONE LEAGUE.json [CUP.json COUNTRY]
  ZONE     IANA zone whose clocks the kick-offs are written in
  LEAGUE   a list of openfootball/football.json
  CUP      a second list whose clubs bear their country, "Arsenal FC (ENG)"; only clubs that are in both are counted then

One line a finding, "club rule severity first-last": Monday weeks from 1 July of the season's first year, counted from 1.
A gap runs from two hours after a kick-off to the next kick-off: under 72 h a warning, under 96 h a caution.
Matches in the seven days that end with a match: more than 2 a warning, more than 1 a caution; not told in weeks with a
short gap that is as serious.
Findings of one rule in weeks side by side are one, as serious as the worst.
"""
import json
import sys
from datetime import date, datetime, timedelta, timezone
from zoneinfo import ZoneInfo


def matches(path, ending=""):
    """(club, kick-off) of both sides of every match, names cut of their country."""
    with open(path, encoding="utf-8") as file:
        for match in json.load(file)["matches"]:
            start = datetime.fromisoformat(f"{match['date']}T{match['time']}")
            for side in ("team1", "team2"):
                if match[side].endswith(ending):
                    yield match[side][: len(match[side]) - len(ending)], start


def joined(found):
    """Weeks of [(week, severity)] side by side made one; by chance the alphabet has "warning" above "caution"."""
    runs = []
    for week, severity in sorted(found):
        if runs and week - runs[-1][1] <= 1:
            runs[-1] = (runs[-1][0], week, max(runs[-1][2], severity))
        else:
            runs.append((week, week, severity))
    return runs


def findings(starts, zone, first_monday):
    starts = sorted(starts)
    week = lambda start: (start.date() - first_monday).days // 7 + 1
    gaps = []
    for one, other in zip(starts, starts[1:]):
        # Two clocks may differ by an hour: hours are counted in universal time.
        apart = other.replace(tzinfo=zone).astimezone(timezone.utc) - one.replace(tzinfo=zone).astimezone(timezone.utc)
        rest = apart - timedelta(hours=2)
        if rest < timedelta(hours=96):
            gaps.append((week(other), "warning" if rest < timedelta(hours=72) else "caution"))
    many = []
    for last in starts:
        inside = sum(1 for start in starts if last.date() - timedelta(days=6) <= start.date() <= last.date())
        severity = "warning" if inside > 2 else "caution"
        if inside > 1 and not any(where == week(last) and told >= severity for where, told in gaps):
            many.append((week(last), severity))
    for rule, found in (("match-gap-short", gaps), ("matches-per-week", many)):
        for first, last, severity in joined(found):
            yield rule, severity, first, last


def main():
    zone, league, *cup = sys.argv[1:]
    seasons = {}
    for club, start in matches(league):
        seasons.setdefault(club, []).append(start)
    if cup:
        abroad = {}
        for club, start in matches(cup[0], f" ({cup[1]})"):
            abroad.setdefault(club, []).append(start)
        seasons = {club: starts + abroad[club] for club, starts in seasons.items() if club in abroad}
    july = date(min(start for starts in seasons.values() for start in starts).year, 7, 1)
    first_monday = july - timedelta(days=july.weekday())
    for club in sorted(seasons):
        for rule, severity, first, last in findings(seasons[club], ZoneInfo(zone), first_monday):
            print(f"{club}\t{rule}\t{severity}\t{first}-{last}")


main()
