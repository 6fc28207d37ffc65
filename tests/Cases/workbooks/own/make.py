"""Makes the workbooks of this folder: year plans of an invented club as people lay them out. Run here; needs openpyxl and LibreOffice."""
import datetime
import subprocess
from datetime import timedelta
from openpyxl import Workbook

DAY = datetime.date


def merged(sheet, row, first, last, text):
    sheet.cell(row, first, text)
    if last > first:
        sheet.merge_cells(start_row=row, start_column=first, end_row=row, end_column=last)


def text_dates():
    """Weeks across; days and months as text without a year, numbers of weeks below, in German."""
    book = Workbook()
    sheet = book.active
    sheet.title = "Jahresplan"
    sheet["A1"] = "Harbour Vale – Saison 2026/27"
    for row, label in enumerate(["Woche ab", "KW", "Phase", "Spiel", "Belastung %", "Urlaub", "Kraft"], 3):
        sheet.cell(row, 1, label)
    for week in range(42):
        day = DAY(2026, 7, 6) + timedelta(7 * week)
        sheet.cell(3, 3 + week, f"{day.day}.{day.month}.")
        sheet.cell(4, 3 + week, f"KW {day.isocalendar()[1]}")
        sheet.cell(7, 3 + week, [50, 60, 75, 40][week % 4])
        sheet.cell(9, 3 + week, "xx" if week % 2 else "x")
    for first, last, name in [(0, 7, "Vorbereitung I"), (8, 11, "Vorbereitung II"), (12, 24, "Hinrunde"), (25, 27, "Winterpause"), (28, 39, "Rückrunde"), (40, 41, "Übergang")]:
        merged(sheet, 5, 3 + first, 3 + last, name)
    for week, text in {12: "H Nordwik (Sa 18:00)", 13: "A Kalnes", 16: "A Brovik Mi", 20: "Pokal A Ostermeer", 33: "A Nordwik (So)"}.items():
        sheet.cell(6, 3 + week, text)
    sheet.cell(8, 29, "Urlaub 24.12.-3.1.")
    return book


def columns_beside():
    """Weeks down; opponent, home or away, day and time in columns of their own."""
    book = Workbook()
    sheet = book.active
    sheet.title = "Plan"
    sheet.append(["HARBOUR VALE WOMEN 2026-27"])
    sheet.append([])
    sheet.append(["Wk", "Week commencing", "Phase", "Opponent", "H/A", "Day", "Throw-off", "Load (1-10)", "Gym", "Comments"])
    matches = {4: ("Norwick", "A", "Sat", datetime.time(19, 30)), 5: ("Kalnes", "H", "Sun", datetime.time(16, 0)), 8: ("Tarnholt", "A", None, None), 11: ("Brovik", None, "Wed", datetime.time(18, 15))}
    for week in range(16):
        match = matches.get(week, (None, None, None, None))
        sheet.append([week + 1, DAY(2026, 8, 3) + timedelta(7 * week), {0: "Pre-season", 4: "League"}.get(week), *match, [4, 6, 8, 3][week % 4], "x" if week % 3 else "xx", {2: "Photo day", 9: "National team window"}.get(week)])
    return book


def two_bands():
    """Weeks across in two bands, the second half of the year below the first; loads as parts of one, shown in per cent."""
    book = Workbook()
    sheet = book.active
    sheet.title = "Year"
    for start, row in [(DAY(2026, 7, 6), 3), (DAY(2026, 12, 21), 12)]:
        for below, label in enumerate(["Week of", "Phase", "Match", "Load", "Pool"]):
            sheet.cell(row + below, 1, label)
        for week in range(24):
            sheet.cell(row, 2 + week, start + timedelta(7 * week)).number_format = "dd/mm"
            sheet.cell(row + 3, 2 + week, [0.5, 0.7, 0.9, 0.6][week % 4]).number_format = "0%"
        merged(sheet, row + 1, 2, 9, "General prep" if row == 3 else "Break")
        merged(sheet, row + 1, 10, 25, "Competition")
    for row, column, text in [(5, 12, "H Kalnes Sat"), (5, 15, "@ Brovik Sun"), (14, 12, "H Norwick Sat"), (7, 4, "lanes 1-2"), (16, 6, "closed")]:
        sheet.cell(row, column, text)
    return book


def calendar_of_weeks():
    """A row for each week, a column for each day of it."""
    book = Workbook()
    sheet = book.active
    sheet.title = "Calendar"
    sheet.append(["Week", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"])
    for week in range(12):
        sheet.append([DAY(2026, 8, 31) + timedelta(7 * week), "Gym", None, "Practice", "Gym" if week % 2 else None, "Testing" if week == 1 else None, "H Kalnes 18:00" if week == 3 else None, "A Norwick" if week == 6 else None])
    return book


def day_by_day():
    """A row for each day."""
    book = Workbook()
    sheet = book.active
    sheet.title = "Days"
    sheet.append(["Date", "Day", "Team session", "Gym", "Match", "Remark"])
    for number in range(120):
        day = DAY(2026, 8, 1) + timedelta(number)
        sheet.append([day, day.strftime("%a"), "Practice" if day.weekday() in (1, 3) else None, "Strength" if day.weekday() == 0 else None, {42: "H Kalnes", 63: "A Norwick 19:00"}.get(number), "holiday" if number in (80, 81) else None])
    return book


def numbers_under_months():
    """Names of months over the numbers of Mondays; the year stands in the title only."""
    book = Workbook()
    sheet = book.active
    sheet.title = "Plan"
    sheet["A1"] = "Harbour Vale 2026/27"
    for row, label in enumerate(["Month", "Monday", "Period", "Fixtures"], 2):
        sheet.cell(row, 1, label)
    months = {}
    for week in range(40):
        day = DAY(2026, 7, 6) + timedelta(7 * week)
        sheet.cell(3, 3 + week, day.day)
        months.setdefault(day.strftime("%B %Y"), []).append(3 + week)
    for name, columns in months.items():
        merged(sheet, 2, columns[0], columns[-1], name.split()[0])
    merged(sheet, 4, 3, 10, "PRE-SEASON")
    merged(sheet, 4, 11, 42, "IN-SEASON")
    sheet.cell(5, 12, "Kalnes (A) Sat")
    sheet.cell(5, 32, "Brovik (H) Sun 17:00")
    return book


def said_twice():
    """Weeks down with what is played, two matches in a cell by lines, and a sheet that lists some of them again with their times."""
    book = Workbook()
    sheet = book.active
    sheet.title = "Weeks"
    sheet.append(["Harbour Vale 2026/27"])
    sheet.append(["Week of", "Matches", "Block", "Week of block", "Match"])
    plays = {2: "Sat Kalnes (H)", 4: "Wed Brovik (A)\nSun Norwick (H)", 6: "Tarnholt (A)", 8: "Queen\nMaude's (H)"}
    for week in range(12):
        text = plays.get(week)
        sheet.append([DAY(2026, 8, 31) + timedelta(7 * week), text.count("\n") + 1 if text else None, f"B{week // 4 + 1}", week % 4 + 1, text])
    listed = book.create_sheet("Fixtures")
    listed.append(["Date", "Time", "Opponent", "H/A"])
    listed.append([DAY(2026, 9, 19), datetime.time(18, 0), "Kalnes", "H"])
    listed.append([DAY(2026, 10, 4), datetime.time(15, 30), "Norwick", "H"])
    listed.append([DAY(2026, 11, 14), datetime.time(17, 0), "Ostermeer", "A"])
    other = book.create_sheet("Swim")
    other.append(["Day", "Swim"])
    for week in range(6):
        other.append([DAY(2026, 9, 6) + timedelta(14 * week), "yes"])
    return book


for make in (text_dates, columns_beside, two_bands, calendar_of_weeks, day_by_day, numbers_under_months, said_twice):
    name = make.__name__.replace("_", "-")
    make().save(f"{name}.xlsx")
    subprocess.run(["soffice", "--headless", "--convert-to", "xls", f"{name}.xlsx"], check=True, capture_output=True)
