"""Reads calendar files with icalendar, and tells what clocks show with zoneinfo: JSON in, JSON out."""
import json
import sys
from datetime import datetime, timezone
from zoneinfo import ZoneInfo

from icalendar import Calendar


def entries(text):
    return [
        {
            'uid': str(event['UID']),
            'start': event['DTSTART'].dt.astimezone(timezone.utc).timestamp(),
            'end': event['DTEND'].dt.astimezone(timezone.utc).timestamp(),
            'title': str(event['SUMMARY']),
            'says': str(event['DESCRIPTION']),
            'sequence': int(event['SEQUENCE']),
        }
        for event in Calendar.from_ical(text).walk('VEVENT')
    ]


def instant(zone, day, minute):
    year, month, number = (int(part) for part in day.split('-'))
    shown = datetime(year, month, number, minute // 60, minute % 60, tzinfo=ZoneInfo(zone))
    return shown.astimezone(timezone.utc).timestamp()


asked = json.load(sys.stdin)
json.dump(
    {
        'files': [entries(text) for text in asked['files']],
        'instants': [instant(*moment) for moment in asked['moments']],
    },
    sys.stdout,
)
