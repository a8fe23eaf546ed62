"""Reads iCalendar text from standard input with two parsers that share no code with the writer, python3-icalendar
and python3-vobject (Debian), and prints what each found as JSON."""
import json
import sys

import icalendar
import vobject

text = sys.stdin.buffer.read()


def day_or_instant(value):
    return value.isoformat()


def by_icalendar():
    calendar = icalendar.Calendar.from_ical(text)
    events = []
    for event in calendar.walk("VEVENT"):
        assert not event.errors, event.errors
        alarms = [a.decoded("TRIGGER").total_seconds() for a in event.walk("VALARM")]
        events.append({
            "uid": str(event["UID"]),
            "start": day_or_instant(event.decoded("DTSTART")),
            "end": day_or_instant(event.decoded("DTEND")),
            "summary": str(event["SUMMARY"]),
            "description": str(event["DESCRIPTION"]),
            "sequence": int(event["SEQUENCE"]),
            "alarms": alarms,
        })
    return events


def by_vobject():
    calendar = vobject.readOne(text.decode("utf-8"))
    calendar.validate(raiseException=True)
    return [{"uid": e.uid.value, "start": day_or_instant(e.dtstart.value), "summary": e.summary.value}
            for e in calendar.vevent_list]


json.dump({"icalendar": by_icalendar(), "vobject": by_vobject()}, sys.stdout)
