-- A refused row of sales whose item and channel a later load names again, on a day that is not complete yet: nobody has to mend it any
-- more, but should what it waited for become known, it still decides what its own load said of that day.
ALTER TYPE waiting_status ADD VALUE 'superseded';
