#!/usr/bin/python3
"""Reads calendars with Debian's python3-icalendar and prints what it finds, one JSON object a line.

Times with a zone are reckoned by the clock that the calendar itself describes (VTIMEZONE), not by the machine's.
"""
import json
import sys
from datetime import datetime, timezone

from icalendar import Calendar


def moment(value, clocks):
    if not isinstance(value, datetime):
        return {"day": value.isoformat()}
    if value.tzinfo is None:
        return {"place": value.isoformat()}
    zone = getattr(value.tzinfo, "zone", None)
    if zone in clocks:
        value = clocks[zone].localize(value.replace(tzinfo=None))
    return {"utc": value.astimezone(timezone.utc).strftime("%Y-%m-%dT%H:%M:%SZ")}


for path in sys.argv[1:]:
    with open(path, "rb") as file:
        calendar = Calendar.from_ical(file.read())
    clocks = {str(block["TZID"]): block.to_tz() for block in calendar.walk("VTIMEZONE")}
    for entry in calendar.walk("VEVENT"):
        end = entry.get("DTEND")
        print(json.dumps({
            "file": path,
            "uid": str(entry["UID"]),
            "sequence": int(entry["SEQUENCE"]),
            "status": str(entry["STATUS"]),
            "summary": str(entry["SUMMARY"]),
            "location": str(entry.get("LOCATION", "")),
            "description": str(entry.get("DESCRIPTION", "")),
            "start": moment(entry["DTSTART"].dt, clocks),
            "end": moment(end.dt, clocks) if end is not None else None,
        }))
