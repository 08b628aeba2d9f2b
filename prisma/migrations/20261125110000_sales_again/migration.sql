-- What a load of sales needs to be read again: the days it spoke for by request, and whether its rows carried time stamps, whose
-- business day follows the venue's clock.
ALTER TABLE load
  ADD COLUMN days_from date,
  ADD COLUMN days_to date, -- included
  ADD COLUMN stamped boolean NOT NULL DEFAULT false,
  ADD CHECK ((days_from IS NULL) = (days_to IS NULL) AND days_from <= days_to);

-- A day with a refused row withdraws nothing: what an earlier load said of it is carried into the load that is live until the
-- refused row is mended.
ALTER TABLE sales_day
  ADD COLUMN carried_from int, -- the load that brought it; null: the load of the row itself
  ADD FOREIGN KEY (venue_id, carried_from) REFERENCES load;
